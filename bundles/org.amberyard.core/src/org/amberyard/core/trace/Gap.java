package org.amberyard.core.trace;

/**
 * A time without points that is too long to be interpolated.
 *
 * @param before last point before
 * @param after first point after
 */
record Gap(TrackPoint before, TrackPoint after) {
    /** Longest time that is interpolated, s. */
    static final double LONGEST_INTERPOLATED_S = 10;
    /** A bus whose place has moved by less has been standing, m; the drift of a receiver at a long stop. */
    private static final double HARDLY_MOVED_M = 25;
    /** Without positions, a bus that is as slow at both ends has been standing, m/s. */
    private static final double HARDLY_MOVING_MPS = 1;

    double durationS() {
        return after.timeS() - before.timeS();
    }

    /** True when the bus has hardly moved: the time counts as standing. */
    boolean standing() {
        return before.hasPosition() && after.hasPosition() ? GreatCircle.distanceM(before, after) <= HARDLY_MOVED_M
                : Math.max(before.speedMps(), after.speedMps()) <= HARDLY_MOVING_MPS;
    }

    /** The step that fills the gap: without movement, or at the mean speed. */
    PathStep step() {
        double meanMps = standing() ? 0 : lengthM() / durationS();
        return PathStep.even(before.timeS(), after.timeS(), meanMps, meanMps);
    }

    /** Without positions the bus is taken to have gone at the mean of the speeds at both ends. */
    private double lengthM() {
        return before.hasPosition() && after.hasPosition() ? GreatCircle.distanceM(before, after)
                : 0.5 * (before.speedMps() + after.speedMps()) * durationS();
    }
}
