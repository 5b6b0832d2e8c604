package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.amberyard.core.battery.FullCycleCount;
import org.amberyard.core.units.Unit;
import org.junit.jupiter.api.Test;

/** Counting of full cycles: common practice, no source. */
class BatteryReferenceTest {

    @Test
    void twoHalfCyclesAreOne() {
        assertEquals(1, FullCycleCount.of(75, 150) + FullCycleCount.of(75, 150), 1e-15);
    }

    /** A pack good for 2,000 full cycles in a bus that goes 100 miles on a charge lasts about 200,000 miles. */
    @Test
    void twoThousandCyclesAtAHundredMiles() {
        double nominalKwh = 150;
        double kwhPerKm = nominalKwh / (100 * Unit.KM_PER_MILE);
        double lifeKm = 200_000 * Unit.KM_PER_MILE;
        assertEquals(2000, FullCycleCount.of(lifeKm * kwhPerKm, nominalKwh), 1e-9);
    }
}
