package org.amberyard.core.battery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.amberyard.core.duty.SampleBus;
import org.junit.jupiter.api.Test;

class PackReplacementTest {
    private static final BatterySpec PACK = SampleBus.battery(150, 0.004, 2000, 0.7, new LinearFade(0.02, 0.0001));

    @Test
    void whicheverLimitComesFirst() {
        assertEquals(Optional.empty(), PackReplacement.due(PACK, 5, 1000));
        assertEquals(Optional.of(PackReplacement.Cause.CYCLE_LIMIT), PackReplacement.due(PACK, 1, 2000));
        assertEquals(Optional.of(PackReplacement.Cause.CAPACITY), PackReplacement.due(PACK, 10, 1001));
    }

    @Test
    void lifeLeftIsByTheNearerLimit() {
        assertEquals(1, PackReplacement.lifeLeft(PACK, 0, 0), 1e-12);
        assertEquals(0.25, PackReplacement.lifeLeft(PACK, 0, 1500), 1e-12);
        assertEquals(1.0 / 3, PackReplacement.lifeLeft(PACK, 10, 0), 1e-12);
        assertEquals(0, PackReplacement.lifeLeft(PACK, 40, 0), 0);
    }

    @Test
    void healthNeverFallsBelowZero() {
        assertEquals(0.85, PACK.fade().health(5, 500), 1e-12);
        assertEquals(0, PACK.fade().health(100, 0), 0);
    }

    @Test
    void fullCyclesNeedAPack() {
        assertThrows(IllegalArgumentException.class, () -> FullCycleCount.of(10, 0));
    }
}
