package org.amberyard.core.whatif;

import org.amberyard.core.math.Checks;

/**
 * Any value between two limits is as likely as any other.
 *
 * @param low lower limit
 * @param high upper limit, above it
 */
public record Uniform(double low, double high) implements Distribution {

    public Uniform {
        Checks.finite("Lower limit of the uniform distribution", low);
        Checks.above("Upper limit of the uniform distribution", high, low);
    }

    @Override
    public double quantile(double share) {
        Checks.within("Share", share, 0, 1);
        return low * (1 - share) + high * share;
    }

    @Override
    public double mean() {
        return (low + high) / 2;
    }

    @Override
    public double sd() {
        return (high - low) / Math.sqrt(12);
    }
}
