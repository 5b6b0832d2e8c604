package org.amberyard.core.math;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class StudentTTest {

    /** Values beyond which five in a hundred lie, as tables of the distribution print them (from memory). */
    @Test
    void tablesOfTheDistribution() {
        double[] five = {12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228};
        for (int freedom = 1; freedom <= five.length; freedom++) {
            assertEquals(0.05, StudentT.chance(five[freedom - 1], freedom), 3e-5, "of " + freedom);
        }
        assertEquals(0.05, StudentT.chance(-2.042, 30), 3e-5);
        assertEquals(0.01, StudentT.chance(3.499, 7), 3e-5);
    }

    @Test
    void endsOfTheDistribution() {
        assertEquals(1, StudentT.chance(0, 5), 0);
        assertEquals(0, StudentT.chance(Double.NEGATIVE_INFINITY, 5), 0);
        assertEquals(0, StudentT.chance(1e9, 9), 1e-12);
    }
}
