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
     * Speeds with those of a standing bus at 0.
     *
     * @param positionScatterM usual error of positions that the speeds come from, m; 0 for measured speeds
     */
    static double[] atRest(double[] speedMps, double positionScatterM) {
        double limitMps = LEAST_MPS + PER_SCATTER * positionScatterM;
        double[] still = speedMps.clone();
        for (int i = 0; i < still.length; i++) {
            still[i] = still[i] < limitMps ? 0 : still[i];
        }
        return still;
    }
}
