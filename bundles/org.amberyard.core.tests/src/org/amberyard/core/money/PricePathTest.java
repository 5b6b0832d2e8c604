package org.amberyard.core.money;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class PricePathTest {

    @Test
    void steadyRiseFollowsTheTimeOfPayment() {
        PricePath path = new PricePath(0.1, List.of());
        assertEquals(1, path.factor(0, 0), 0);
        assertEquals(1.21, path.factor(1, 2), 1e-12);
        assertEquals(1, PricePath.FLAT.factor(7, 7), 0);
    }

    @Test
    void pointsAreInterpolatedAndHeld() {
        PricePath path = new PricePath(0.5, List.of(new PricePath.Point(2, 1.2), new PricePath.Point(6, 2.0)));
        assertEquals(1.2, path.factor(0, 0), 1e-12);
        assertEquals(1.2, path.factor(2, 3), 1e-12);
        assertEquals(1.6, path.factor(4, 5), 1e-12);
        assertEquals(2.0, path.factor(30, 31), 1e-12);
    }
}
