package org.amberyard.core.math;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** By hand. */
class RoundingDustTest {

    @Test
    void onlyNextToNothingIsNothing() {
        assertEquals(0, RoundingDust.swept(1.73e-18, 0.02), 0);
        assertEquals(0, RoundingDust.swept(-1.73e-18, -0.02), 0);
        assertEquals(1e-9, RoundingDust.swept(1e-9, 1), 0);
        assertEquals(1.73e-18, RoundingDust.swept(1.73e-18, 0), 0, "beside nothing it is something");
    }
}
