package org.amberyard.core.whatif;

import org.amberyard.core.math.Checks;

/**
 * What an input is varied over when it is varied by itself, in its unit.
 *
 * @param low low value
 * @param base value of the study
 * @param high high value; low and high may stand in either order and on the same side of the base
 */
public record Spread(double low, double base, double high) {

    public Spread {
        Checks.finite("Low value", low);
        Checks.finite("Base value", base);
        Checks.finite("High value", high);
    }

    /** From one percentile of a distribution to another. */
    public static Spread of(Distribution distribution, double base, double lowShare, double highShare) {
        return new Spread(distribution.quantile(lowShare), base, distribution.quantile(highShare));
    }
}
