package org.amberyard.core.whatif;

import java.util.Arrays;
import org.amberyard.core.math.Checks;
import org.apache.commons.math3.distribution.BinomialDistribution;

/**
 * What a share of all draws stays within, told from a few independent ones whatever their distribution: one of the largest of them
 * is that far up that it lies beyond the share with the confidence (Wilks, "Determination of sample sizes for setting tolerance
 * limits", Annals of Mathematical Statistics 12 (1941), 91–96, from memory).
 *
 * @param share of all draws that stay within, above 0 and below 1
 * @param confidence that they do, above 0 and below 1
 */
record ToleranceBound(double share, double confidence) {

    ToleranceBound {
        Checks.within("Share", share, Double.MIN_VALUE, Math.nextDown(1.0));
        Checks.within("Confidence", confidence, Double.MIN_VALUE, Math.nextDown(1.0));
    }

    /** Fewest draws of which the largest but so many is the bound. */
    int draws(int leftOut) {
        int draws = leftOut + 1;
        while (leftOut(draws) < leftOut) {
            draws++;
        }
        return draws;
    }

    /** The bound, infinite where the values are too few for one. */
    double of(double[] values) {
        int leftOut = leftOut(values.length);
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return leftOut < 0 ? Double.POSITIVE_INFINITY : sorted[sorted.length - 1 - leftOut];
    }

    /** How many of the largest may be left out; below 0 where not even the largest is far enough up. */
    private int leftOut(int draws) {
        BinomialDistribution beyond = new BinomialDistribution(null, draws, 1 - share);
        int leftOut = -1;
        while (leftOut + 1 < draws && beyond.cumulativeProbability(leftOut + 1) <= 1 - confidence) {
            leftOut++;
        }
        return leftOut;
    }
}
