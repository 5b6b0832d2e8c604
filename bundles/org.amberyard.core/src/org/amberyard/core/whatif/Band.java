package org.amberyard.core.whatif;

import org.amberyard.core.math.Checks;

/**
 * An estimate and what it may be in truth.
 *
 * @param value the estimate
 * @param low lower end of its confidence interval
 * @param high upper end
 */
public record Band(double value, double low, double high) {

    /**
     * Standard deviations to both sides of the mean that hold a share of all cases.
     *
     * @param confidence above 0 and below 1, such as 0.95
     */
    static double deviations(double confidence) {
        Checks.within("Confidence", confidence, Double.MIN_VALUE, Math.nextDown(1.0));
        return NormalQuantile.of((1 + confidence) / 2);
    }

    /** True when a value lies in the interval. */
    public boolean holds(double other) {
        return other >= low && other <= high;
    }
}
