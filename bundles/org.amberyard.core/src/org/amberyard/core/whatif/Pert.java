package org.amberyard.core.whatif;

import java.util.Objects;
import org.amberyard.core.math.Checks;

/**
 * Between two limits with a most likely value, smooth and less heavy at the limits than a triangle: a beta distribution
 * whose mean is the lower limit, four times the most likely value and the upper limit over six (Malcolm, Roseboom,
 * Clark and Fazar, "Application of a technique for research and development program evaluation", Operations Research 7
 * (1959), 646–669, from memory; the beta distribution with shapes that add up to six is common practice).
 */
public final class Pert implements Distribution {
    private static final double WEIGHT_OF_MODE = 4;

    private final double low;
    private final double mode;
    private final double high;
    private final BetaQuantile beta;

    /**
     * By three values.
     *
     * @param low lower limit
     * @param mode most likely value, a limit or between the limits
     * @param high upper limit, above the lower
     */
    public Pert(double low, double mode, double high) {
        this.low = Checks.finite("Lower limit of the PERT distribution", low);
        this.high = Checks.above("Upper limit of the PERT distribution", high, low);
        this.mode = Checks.within("Most likely value of the PERT distribution", mode, low, high);
        this.beta = new BetaQuantile(risingShape(), fallingShape());
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
        return low + (high - low) * beta.of(share);
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

    @Override
    public boolean equals(Object other) {
        return other instanceof Pert pert && Double.compare(low, pert.low) == 0 && Double.compare(mode, pert.mode) == 0
                && Double.compare(high, pert.high) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(low, mode, high);
    }

    @Override
    public String toString() {
        return "Pert[low=" + low + ", mode=" + mode + ", high=" + high + "]";
    }
}
