package org.amberyard.core.trace;

/**
 * Brings speeds too small to be driven to exactly 0.
 *
 * <p>A standing bus seems to creep as its position scatters, so the limit grows with the scatter: 0.3 m/s, and 0.2 m/s for
 * each metre; by trial, no source. A bus that truly goes slower for a while loses that distance.
 */
final class Standing {
    private static final double LEAST_MPS = 0.3;
    private static final double PER_SCATTER = 0.2;

    private Standing() {
    }

    /**
     * Speed below which a bus is taken to stand, m/s.
     *
     * @param positionScatterM usual error of positions that speeds come from, m; 0 for measured speeds
     */
    static double limitMps(double positionScatterM) {
        return LEAST_MPS + PER_SCATTER * positionScatterM;
    }

    /** Speeds with those below a limit at 0. */
    static double[] atRest(double[] speedMps, double limitMps) {
        double[] still = speedMps.clone();
        for (int i = 0; i < still.length; i++) {
            still[i] = still[i] < limitMps ? 0 : still[i];
        }
        return still;
    }
}
