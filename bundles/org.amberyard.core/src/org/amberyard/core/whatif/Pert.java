package org.amberyard.core.whatif;

import org.amberyard.core.math.Checks;
import org.apache.commons.math3.distribution.BetaDistribution;

/**
 * Between two limits with a most likely value, smooth and less heavy at the limits than a triangle: a beta distribution
 * whose mean is the lower limit, four times the most likely value and the upper limit over six (Malcolm, Roseboom,
 * Clark and Fazar, "Application of a technique for research and development program evaluation", Operations Research 7
 * (1959), 646–669, from memory; the beta distribution with shapes that add up to six is common practice).
 *
 * @param low lower limit
 * @param mode most likely value, a limit or between the limits
 * @param high upper limit, above the lower
 */
public record Pert(double low, double mode, double high) implements Distribution {
    private static final double WEIGHT_OF_MODE = 4;
    private static final double ACCURACY = 1e-12;

    public Pert {
        Checks.finite("Lower limit of the PERT distribution", low);
        Checks.above("Upper limit of the PERT distribution", high, low);
        Checks.within("Most likely value of the PERT distribution", mode, low, high);
    }

    private double risingShape() {
        return 1 + WEIGHT_OF_MODE * (mode - low) / (high - low);
    }

    private double fallingShape() {
        return 1 + WEIGHT_OF_MODE * (high - mode) / (high - low);
    }

    @Override
    public double quantile(double share) {
        Checks.within("Share", share, 0, 1);
        return low + (high - low) * new BetaDistribution(null, risingShape(), fallingShape(), ACCURACY)
                .inverseCumulativeProbability(share);
    }

    @Override
    public double mean() {
        return (low + WEIGHT_OF_MODE * mode + high) / (2 + WEIGHT_OF_MODE);
    }

    @Override
    public double sd() {
        double shapes = 2 + WEIGHT_OF_MODE;
        return (high - low) / shapes * Math.sqrt(risingShape() * fallingShape() / (shapes + 1));
    }
}
