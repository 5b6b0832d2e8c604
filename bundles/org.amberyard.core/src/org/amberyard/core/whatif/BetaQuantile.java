package org.amberyard.core.whatif;

import org.apache.commons.math3.distribution.BetaDistribution;

/**
 * Quantiles of a beta distribution from a table. Over the normal score of a share the quantile is a smooth curve, also
 * where it rises steeply over the share itself; between scores of the table it is a cubic with the right slopes at both
 * ends, which misses by less than 1e-10 of the range. Shares beyond the table are worked out one by one.
 */
final class BetaQuantile {
    private static final double ACCURACY = 1e-13;
    private static final int NEWTON_STEPS = 3;
    private static final double LAST_SCORE = 4;
    private static final int PER_SCORE = 64;
    private static final int STEPS = (int) (2 * LAST_SCORE * PER_SCORE);

    private final BetaDistribution beta;
    private final double[] values = new double[STEPS + 1];
    /** By how much the quantile would rise over a step at its slope. */
    private final double[] rises = new double[STEPS + 1];

    BetaQuantile(double risingShape, double fallingShape) {
        this.beta = new BetaDistribution(null, risingShape, fallingShape, ACCURACY);
        for (int step = 0; step <= STEPS; step++) {
            double score = (double) step / PER_SCORE - LAST_SCORE;
            double share = NormalQuantile.shareBelow(score);
            values[step] = step == 0 ? beta.inverseCumulativeProbability(share)
                    : closedIn(values[step - 1] + rises[step - 1], share);
            rises[step] = NormalQuantile.density(score) / beta.density(values[step]) / PER_SCORE;
        }
    }

    /** Newton's method from a value so near that each step doubles the digits. */
    private double closedIn(double near, double share) {
        double value = near;
        for (int step = 0; step < NEWTON_STEPS; step++) {
            value -= (beta.cumulativeProbability(value) - share) / beta.density(value);
        }
        return value;
    }

    /** Quantile of a share, 0 to 1. */
    double of(double share) {
        double place = (NormalQuantile.of(share) + LAST_SCORE) * PER_SCORE;
        if (!(place >= 0 && place < STEPS)) {
            return beta.inverseCumulativeProbability(share);
        }
        int step = (int) place;
        return cubic(step, place - step);
    }

    private double cubic(int step, double part) {
        double left = 1 - part;
        return left * left * ((1 + 2 * part) * values[step] + part * rises[step])
                + part * part * ((1 + 2 * left) * values[step + 1] - left * rises[step + 1]);
    }
}
