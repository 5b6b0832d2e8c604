package org.amberyard.core.upkeep;

/**
 * What failures of a year come to, and how far that may miss: parts fail independently of each other, so variances add up.
 *
 * @param failures expected number of failures
 * @param cost their expected cost, base-date money
 * @param costVariance variance of that cost, money²
 */
public record FailureSpread(double failures, double cost, double costVariance) {
    /** No failures. */
    public static final FailureSpread NONE = new FailureSpread(0, 0, 0);

    /** These and those of other parts or buses. */
    public FailureSpread plus(FailureSpread o) {
        return new FailureSpread(failures + o.failures, cost + o.cost, costVariance + o.costVariance);
    }

    /** The same failures with each repair's cost multiplied. */
    public FailureSpread costing(double factor) {
        return new FailureSpread(failures, factor * cost, factor * factor * costVariance);
    }

    /** Standard deviation of the cost, base-date money. */
    public double costDeviation() {
        return Math.sqrt(Math.max(0, costVariance));
    }
}
