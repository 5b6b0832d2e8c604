package org.amberyard.core.upkeep;

import org.amberyard.core.math.Checks;

/**
 * How a part fails at random over the distance of the bus, each failure making it new; see {@link WeibullRenewal}.
 *
 * @param shape Weibull shape: 1 for chance, above 1 for wear-out
 * @param meanKm mean distance to a failure, km
 */
public record FailureLaw(double shape, double meanKm) {

    /** @throws IllegalArgumentException when one of them is not above zero */
    public FailureLaw {
        Checks.positive("Weibull shape", shape);
        Checks.positive("Mean distance to a failure", meanKm);
    }

    /** The renewal up to an odometer, km. */
    public WeibullRenewal renewal(double longestKm) {
        return new WeibullRenewal(shape, meanKm, Math.max(longestKm, meanKm));
    }
}
