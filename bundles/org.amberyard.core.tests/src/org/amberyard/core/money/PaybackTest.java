package org.amberyard.core.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PaybackTest {

    private static Payback of(double... saving) {
        double[] times = new double[saving.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = i;
        }
        return Payback.of(times, saving);
    }

    @Test
    void crossesOnAStraightLine() {
        assertEquals(new Payback(Payback.Outcome.AFTER, 1.5), of(-30, -10, 10, 20));
    }

    @Test
    void countsTheLastCrossing() {
        assertEquals(new Payback(Payback.Outcome.AFTER, 3.5), of(-30, 10, 5, -10, 10));
    }

    @Test
    void neverAndAtOnce() {
        assertEquals(Payback.Outcome.NEVER, of(10, 20, -1).outcome());
        assertTrue(Double.isNaN(of(-1).years()));
        assertEquals(new Payback(Payback.Outcome.AT_ONCE, 0), of(0, 5, 2));
    }

    @Test
    void lessThanACentIsNoDifference() {
        assertEquals(Payback.Outcome.NO_DIFFERENCE, of(0, -0.001, 0.002).outcome());
        assertEquals(Payback.Outcome.AT_ONCE, of(-0.001, 5).outcome());
    }
}
