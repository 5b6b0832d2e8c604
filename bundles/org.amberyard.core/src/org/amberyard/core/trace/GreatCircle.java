package org.amberyard.core.trace;

/**
 * Distance along the great circle of a sphere by the haversine formula (R. W. Sinnott, "Virtues of the Haversine", Sky and
 * Telescope 68, 1984, from memory), which stays exact for points a metre apart.
 *
 * <p>The sphere has the mean radius (2a + b)/3 of the GRS 80 ellipsoid, 6,371,008.8 m, that the IUGG recommends (from
 * memory). On the ellipsoid a distance differs by up to 0.6 %, with latitude and direction.
 */
public final class GreatCircle {
    /** Mean radius of the earth, m. */
    public static final double RADIUS_M = 6_371_008.8;

    private GreatCircle() {
    }

    /** Distance between two points that have positions, m. */
    public static double distanceM(TrackPoint from, TrackPoint to) {
        return distanceM(from.latitudeDeg(), from.longitudeDeg(), to.latitudeDeg(), to.longitudeDeg());
    }

    /** Distance between two places given in degrees, m. */
    public static double distanceM(double fromLatitudeDeg, double fromLongitudeDeg, double toLatitudeDeg,
            double toLongitudeDeg) {
        double from = Math.toRadians(fromLatitudeDeg);
        double to = Math.toRadians(toLatitudeDeg);
        double h = haversine(to - from)
                + Math.cos(from) * Math.cos(to) * haversine(Math.toRadians(toLongitudeDeg - fromLongitudeDeg));
        return 2 * RADIUS_M * Math.asin(Math.sqrt(Math.min(1, h)));
    }

    private static double haversine(double angle) {
        double half = Math.sin(angle / 2);
        return half * half;
    }
}
