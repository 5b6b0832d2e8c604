package org.amberyard.core.duty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class HeatBalanceTest {
    private static final HeatBalance BODY = new HeatBalance(0.12, 0.3);

    /** What comes in is stored or lost; the loss is summed over small steps of the differential equation. */
    @Property(tries = 100)
    void heatIsConserved(@ForAll @DoubleRange(min = -30, max = 30) double startC,
            @ForAll @DoubleRange(min = -30, max = 30) double airC, @ForAll @DoubleRange(min = 0, max = 3) double gainsKw,
            @ForAll @DoubleRange(min = 0.01, max = 2) double hours) {
        HeatBalance.Thermostat limits = new HeatBalance.Thermostat(16, 25, 20, 15);
        HeatBalance.Held held = BODY.held(startC, airC, gainsKw, hours, limits);
        int steps = 20_000;
        double bodyC = startC;
        double lostKwh = 0;
        for (int step = 0; step < steps; step++) {
            double lossKw = 0.3 * (bodyC - airC);
            lostKwh += lossKw * hours / steps;
            bodyC += (gainsKw + held.heatKw() - held.coldKw() - lossKw) * hours / steps / 0.12;
        }
        assertEquals(bodyC, held.endC(), 0.01);
        double inKwh = (gainsKw + held.heatKw() - held.coldKw()) * hours;
        assertEquals(inKwh, lostKwh + 0.12 * (held.endC() - startC), 0.01);
    }

    @Test
    void heatsAndCoolsOnlyAsFarAsAskedAndAble() {
        HeatBalance.Thermostat limits = new HeatBalance.Thermostat(16, 25, 20, 15);
        assertEquals(16, BODY.held(0, -10, 0, 1, limits).endC(), 1e-9);
        assertEquals(20, BODY.held(0, -10, 0, 0.01, limits).heatKw(), 0, "as much as the heater can");
        assertEquals(25, BODY.held(40, 35, 1, 1, limits).endC(), 1e-9);
        HeatBalance.Held between = BODY.held(20, 20, 0, 1, limits);
        assertEquals(0, between.heatKw() + between.coldKw(), 0);
        assertTrue(BODY.held(10, 10, 0, 1, limits.withHeat(0)).endC() < 16);
    }

    @Test
    void anyTimeAndAnyBodyGiveFigures() {
        HeatBalance.Thermostat limits = new HeatBalance.Thermostat(16, 25, 20, 15);
        for (double capacity : new double[] {0, 0.12}) {
            for (double conductance : new double[] {0, 0.3}) {
                for (double hours : new double[] {0, 1e-18, 1e-9, 1, 1e6}) {
                    HeatBalance.Held held = new HeatBalance(capacity, conductance).held(5, -10, 0.5, hours, limits);
                    assertTrue(Double.isFinite(held.endC() + held.heatKw() + held.coldKw()),
                            capacity + " kWh/K, " + conductance + " kW/K, " + hours + " h: " + held);
                }
            }
        }
    }
}
