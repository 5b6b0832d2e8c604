package org.amberyard.core.money;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
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
    void programmePaysNeverMoreThanThePrice() {
        Programme programme = new Programme("P", 0, 3, 5, 0.5, 100, false, Map.of("C",
                new Programme.BusAward(500, 0.5, 10_000)));
        assertEquals(300, programme.forBus("C", 300, 300), 0);
        assertEquals(500 + 50, programme.forBus("C", 1000, 900), 0);
        assertEquals(0, programme.forBus("A", 1000, 0), 0);
        assertEquals(200, programme.forPorts(1000, 2), 0);
    }
}
