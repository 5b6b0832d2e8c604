package org.amberyard.core.battery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.amberyard.core.duty.SampleBus;
import org.junit.jupiter.api.Test;

/** Charging of a pack of 100 kWh nominal, 90 usable, that takes 100 kW when warm and tapers from 90 %. */
class ChargingTest {
    private static final BatterySpec PACK = SampleBus.battery(100, 0.004, 2000, 0.7, new LinearFade(0.01, 0));
    private static final ConstantPowerTaper TAPER = new ConstantPowerTaper(PACK, 1);

    @Test
    void acceptanceFallsInTheColdAndNearFull() {
        assertEquals(100, PACK.acceptanceKw(20, 0.5), 1e-12);
        assertEquals(50, PACK.acceptanceKw(2.5, 0.5), 1e-12);
        assertEquals(0, PACK.acceptanceKw(-10, 0.5), 0);
        assertEquals(52.5, PACK.acceptanceKw(20, 0.95), 1e-12);
        assertEquals(5, PACK.acceptanceKw(20, 1), 1e-12);
    }

    @Test
    void constantPowerFirst() {
        assertEquals(0.5 + 20.0 * 2 / 90, TAPER.endShare(0.5, 20, 20, 2), 1e-12);
        assertEquals(0.5, TAPER.endShare(0.5, 20, -15, 2), 0, "too cold");
        assertEquals(1, TAPER.endShare(0.5, 20, 20, 10), 0);
    }

    /** The closed form against small steps of the same rule. */
    @Property(tries = 100)
    void taperIsThatOfSmallSteps(@ForAll @DoubleRange(min = 0, max = 0.99) double start,
            @ForAll @DoubleRange(min = 2, max = 150) double portKw, @ForAll @DoubleRange(min = -8, max = 30) double packC,
            @ForAll @DoubleRange(min = 0.01, max = 3) double hours) {
        int steps = 40_000;
        double share = start;
        for (int step = 0; step < steps; step++) {
            double kw = Math.min(portKw, PACK.acceptanceKw(packC, share));
            share = Math.min(1, share + kw * hours / steps / 90);
        }
        assertEquals(share, TAPER.endShare(start, portKw, packC, hours), 2e-4);
    }

    @Test
    void longerNeverChargesLess() {
        double before = 0.6;
        for (double hours = 0.1; hours < 3; hours += 0.1) {
            double after = TAPER.endShare(0.6, 90, 10, hours);
            assertTrue(after >= before && after <= 1);
            before = after;
        }
    }

    @Test
    void resistanceDoublesFromRoomToFreezing() {
        assertEquals(1, PackResistance.coldFactor(25), 1e-12);
        assertEquals(2.15, PackResistance.coldFactor(0), 0.01);
        assertEquals(4, PACK.resistanceKwh(100 * 100, 25), 1e-12);
    }
}
