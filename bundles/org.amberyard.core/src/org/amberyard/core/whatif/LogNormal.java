package org.amberyard.core.whatif;

import org.amberyard.core.math.Checks;

/**
 * A value above zero whose logarithm follows the bell curve: it is as likely to be a factor above its median as below
 * it.
 *
 * @param logMean mean of the natural logarithm
 * @param logSd standard deviation of the natural logarithm
 */
public record LogNormal(double logMean, double logSd) implements Distribution {
    private static final double HIGH_SHARE = 0.95;

    public LogNormal {
        Checks.finite("Mean logarithm of the lognormal distribution", logMean);
        Checks.positive("Standard deviation of the logarithm of the lognormal distribution", logSd);
    }

    /**
     * By two values that people can name.
     *
     * @param median the value that half of all cases exceed, above 0
     * @param p95 the value that one case in twenty exceeds, above the median
     */
    public static LogNormal ofMedian(double median, double p95) {
        Checks.positive("Median of the lognormal distribution", median);
        Checks.above("95th percentile of the lognormal distribution", p95, median);
        return new LogNormal(Math.log(median), Math.log(p95 / median) / NormalQuantile.of(HIGH_SHARE));
    }

    @Override
    public double quantile(double share) {
        Checks.within("Share", share, 0, 1);
        return Math.exp(logMean + logSd * NormalQuantile.of(share));
    }

    @Override
    public double mean() {
        return Math.exp(logMean + logSd * logSd / 2);
    }

    @Override
    public double sd() {
        return mean() * Math.sqrt(Math.expm1(logSd * logSd));
    }
}
