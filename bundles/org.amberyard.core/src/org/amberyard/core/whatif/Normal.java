package org.amberyard.core.whatif;

import org.amberyard.core.math.Checks;

/**
 * The bell curve, without limits.
 *
 * @param mean its mean
 * @param sd its standard deviation, above 0
 */
public record Normal(double mean, double sd) implements Distribution {

    public Normal {
        Checks.finite("Mean of the normal distribution", mean);
        Checks.positive("Standard deviation of the normal distribution", sd);
    }

    @Override
    public double quantile(double share) {
        Checks.within("Share", share, 0, 1);
        return mean + sd * NormalQuantile.of(share);
    }

    /** How many standard deviations a value is above the mean. */
    double deviations(double value) {
        return (value - mean) / sd;
    }
}
