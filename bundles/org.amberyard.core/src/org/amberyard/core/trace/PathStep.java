package org.amberyard.core.trace;

/**
 * A piece of a drive between two moments. Distance runs as a cubic of time that keeps the length of the piece and the
 * speeds at its ends; where the length is the mean of both speeds times the time, speed changes evenly.
 *
 * @param startS time at the start, s
 * @param endS time at the end, s
 * @param lengthM distance covered, m
 * @param startMps speed at the start, m/s
 * @param endMps speed at the end, m/s
 */
record PathStep(double startS, double endS, double lengthM, double startMps, double endMps) {

    /** A step in which speed changes evenly. */
    static PathStep even(double startS, double endS, double startMps, double endMps) {
        return new PathStep(startS, endS, 0.5 * (startMps + endMps) * (endS - startS), startMps, endMps);
    }

    double durationS() {
        return endS - startS;
    }

    /** Speed at a moment within the step, m/s: the derivative of the cubic. */
    double speedMps(double timeS) {
        double u = (timeS - startS) / durationS();
        double meanMps = lengthM / durationS();
        return 6 * u * (1 - u) * meanMps + startMps * (1 - 4 * u + 3 * u * u) + endMps * (3 * u * u - 2 * u);
    }
}
