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

    @Test
    void aPathKeepsItsShapeAtAnotherLevelOrRise() {
        PricePath path = new PricePath(0.1, List.of());
        assertEquals(1.5 * 1.21, path.times(1.5).factor(1, 2), 1e-12);
        assertEquals(1.44, path.rising(0.2).factor(1, 2), 1e-12);
        assertEquals(1.6 * 0.5, new PricePath(0.5, List.of(new PricePath.Point(2, 1.2), new PricePath.Point(6, 2.0))).times(0.5).factor(4, 5), 1e-12);
    }

    /** A price of two years before the base date has risen by a tenth twice, and prices in general by 3 %, when the study begins. */
    @Test
    void aPriceOfAnEarlierDateRisesFromThere() {
        PricePath earlier = new PricePath(0.1, List.of()).stated(2, 1.03);
        assertEquals(1.03 * 1.21, earlier.atBaseDate(), 1e-12);
        assertEquals(1.03 * 1.331, earlier.factor(0, 1), 1e-12);
        PricePath entered = new PricePath(0.1, List.of(new PricePath.Point(0, 1), new PricePath.Point(2, 1.5))).stated(2, 1.03);
        assertEquals(1.03, entered.atBaseDate(), 1e-12);
        assertEquals(1.03 * 1.25, entered.factor(1, 2), 1e-12);
    }
}
