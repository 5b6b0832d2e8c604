package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.amberyard.core.trace.GreatCircle;
import org.junit.jupiter.api.Test;

/**
 * Distances on a sphere. Between the airports of Nashville and Los Angeles, 36.12 N 86.67 W and 33.94 N 118.40 W, lie
 * 2886.44444283798 km on a sphere of 6371.0 km: Rosetta Code, task "Haversine formula", commentary (read in a transcription).
 * A degree of a great circle is a 360th of the circumference.
 */
class GreatCircleReferenceTest {

    @Test
    void nashvilleToLosAngeles() {
        double metres = GreatCircle.distanceM(36.12, -86.67, 33.94, -118.40);
        assertEquals(2886.44444283798, metres / GreatCircle.RADIUS_M * 6371.0, 1e-9);
    }

    @Test
    void aDegree() {
        double degree = 2 * Math.PI * GreatCircle.RADIUS_M / 360;
        assertEquals(degree, GreatCircle.distanceM(10, 20, 11, 20), 1e-6);
        assertEquals(degree, GreatCircle.distanceM(0, 179.5, 0, -179.5), 1e-6);
        assertEquals(degree / 1000, GreatCircle.distanceM(0, 20, 0, 20.001), 1e-6);
    }

    /** The mean radius of the ellipsoid GRS 80, whose half axes are 6,378,137 m and 6,356,752.3141 m (from memory). */
    @Test
    void radius() {
        assertEquals((2 * 6_378_137 + 6_356_752.3141) / 3, GreatCircle.RADIUS_M, 0.1);
    }
}
