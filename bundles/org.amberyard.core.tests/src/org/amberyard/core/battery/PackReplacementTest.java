package org.amberyard.core.battery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.amberyard.core.duty.SampleBus;
import org.junit.jupiter.api.Test;

class PackReplacementTest {
    private static final BatterySpec PACK = SampleBus.battery(150, 0.004, 2000, 0.7, new LinearFade(0.02, 0.0001));
    private static final BatterySpec TIMELESS = SampleBus.battery(150, 0.004, 2000, -2, new LinearFade(0.02, 0.0001));

    @Test
    void whicheverLimitComesFirst() {
        assertEquals(Optional.empty(), PackReplacement.due(PACK, worn(5, 1000), 0.8));
        assertEquals(Optional.of(PackReplacement.Cause.CYCLE_LIMIT), PackReplacement.due(PACK, worn(1, 2000), 0));
        assertEquals(Optional.of(PackReplacement.Cause.CAPACITY), PackReplacement.due(PACK, worn(10, 1001), 0));
        assertEquals(Optional.of(PackReplacement.Cause.DUTY), PackReplacement.due(PACK, worn(5, 1000), 0.81));
        assertEquals(Optional.of(PackReplacement.Cause.AGE), PackReplacement.due(TIMELESS, worn(100, 0), 0));
    }

    @Test
    void lifeLeftIsByTheNearestLimit() {
        assertEquals(1, PackReplacement.lifeLeft(PACK, worn(0, 0)), 1e-12);
        assertEquals(0.25, PackReplacement.lifeLeft(PACK, worn(0, 1500)), 1e-12);
        assertEquals(1.0 / 3, PackReplacement.lifeLeft(PACK, worn(10, 0)), 1e-12);
        assertEquals(0, PackReplacement.lifeLeft(PACK, worn(40, 0)), 0);
        assertEquals(0.75, PackReplacement.lifeLeft(TIMELESS, worn(25, 0)), 1e-12);
    }

    @Test
    void healthNeverFallsBelowZero() {
        assertEquals(0, worn(100, 0).health(), 0);
    }

    @Test
    void fullCyclesNeedAPack() {
        assertThrows(IllegalArgumentException.class, () -> FullCycleCount.of(10, 0));
    }

    /** Pro rata by the nearer of years and distance; nothing outside years, distance or promise. */
    @Test
    void theMakerPaysForWhatIsLeftOfTheWarranty() {
        Warranty warranty = new Warranty(8, 160_000, 0.7);
        assertEquals(0.25, warranty.makerShare(6, 40_000, 0.69), 1e-12);
        assertEquals(0.5, warranty.makerShare(3, 80_000, 0.7), 1e-12);
        assertEquals(0, warranty.makerShare(3, 80_000, 0.71), 0);
        assertEquals(0, warranty.makerShare(8, 80_000, 0.6), 0);
        assertEquals(0, warranty.makerShare(3, 160_000, 0.6), 0);
        assertEquals(0, Warranty.NONE.makerShare(0, 0, 0), 0);
    }

    /** A measurement keeps the proportion of the losses and is where the fade goes on from. */
    @Test
    void aMeasuredHealthAnchorsTheFade() {
        FadeState measured = new FadeState(0.06, 0.02).measured(0.88);
        assertEquals(0.09, measured.calendarLoss(), 1e-12);
        assertEquals(0.88, measured.health(), 1e-12);
        assertEquals(0.9, FadeState.NEW.measured(0.9).health(), 1e-12);
    }

    private static PackWear worn(double years, double fullCycles) {
        return new PackWear(years, fullCycles, new FadeState(0.02 * years, 0.0001 * fullCycles));
    }
}
