package org.amberyard.core.battery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** A pack of 90 kWh usable that takes 100 kW, tapers from 90 % and takes 5 kW when full. */
class TaperCurveTest {
    private static final TaperCurve CURVE = new TaperCurve(100, 5, 0.9, 90);

    /** dt = usable · ds / a(s) along the taper: 90 · 0.1 / 95 · ln(100 / 5) hours from 90 % to full. */
    @Test
    void closedFormOfTheTaper() {
        assertEquals(90 * 0.1 / 95 * Math.log(20), CURVE.hours(0.9, 1, 500), 1e-12);
        assertEquals(0.5 * 90 / 20, CURVE.hours(0.3, 0.8, 20), 1e-12);
        assertEquals(90 / 5.0, CURVE.hours(0, 1, 5), 1e-12, "never tapers at the power of the full pack");
        assertEquals(Double.POSITIVE_INFINITY, CURVE.hours(0.2, 0.3, 0), 0);
    }

    @Property(tries = 500)
    void hoursAndStartsInvertTheCharge(@ForAll @DoubleRange(min = -0.2, max = 0.95) double start,
            @ForAll @DoubleRange(min = 1, max = 150) double kw, @ForAll @DoubleRange(min = 0.01, max = 5) double hours) {
        double end = CURVE.endShare(start, kw, hours);
        if (end < 1) {
            assertEquals(hours, CURVE.hours(start, end, kw), 1e-9);
            assertEquals(start, CURVE.startShare(end, kw, hours), 1e-9);
        }
    }

    /** From 95 % at 52.5 kW to 97 % at 33.5 kW, all of it in the taper. */
    @Test
    void withinTheTaperTheLeastChargeIsWhereItStarts() {
        double hours = 90 / 950.0 * Math.log(52.5 / 33.5);
        assertEquals(hours, CURVE.hours(0.95, 0.97, 500), 1e-12);
        assertEquals(0.95, CURVE.startShare(0.97, 500, hours), 1e-12);
        assertEquals(0.97, CURVE.endShare(0.95, 500, hours), 1e-12);
        assertEquals(0.97, CURVE.startShare(0.97, 0, hours), 0, "nothing is brought in");
    }

    /** The even power ends at the wanted charge and no lower one does. */
    @Property(tries = 500)
    void evenPowerIsJustEnough(@ForAll @DoubleRange(min = 0, max = 0.98) double start,
            @ForAll @DoubleRange(min = 0.01, max = 1) double rise, @ForAll @DoubleRange(min = 0.2, max = 14) double hours) {
        double end = Math.min(1, start + rise);
        double kw = CURVE.evenKw(start, end, hours, 60);
        if (kw < 60) {
            assertEquals(hours, CURVE.hours(start, end, kw), 1e-9 * hours);
        } else {
            assertTrue(CURVE.endShare(start, 60, hours) <= end + 1e-12);
        }
    }

    @Test
    void evenPowerWithoutTaperIsEnergyOverTime() {
        assertEquals(45 / 12.0, CURVE.evenKw(0.5, 1, 12, 60), 1e-12);
    }
}
