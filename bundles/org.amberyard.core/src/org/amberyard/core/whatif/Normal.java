package org.amberyard.core.whatif;

import org.amberyard.core.math.Checks;

/**
 * The bell curve, whole or cut off at one or both sides; what is cut off is spread over what is left in proportion.
 *
 * @param centre mean of the whole curve
 * @param spread standard deviation of the whole curve
 * @param from lower limit; minus infinity for none
 * @param to upper limit, above it; infinity for none
 */
public record Normal(double centre, double spread, double from, double to) implements Distribution {
    private static final double LEAST_LEFT = 1e-6;

    public Normal {
        Checks.finite("Mean of the normal distribution", centre);
        Checks.positive("Standard deviation of the normal distribution", spread);
        if (!(from < to)) {
            throw new IllegalArgumentException("Lower limit of the normal distribution is " + from
                    + " but must be below its upper limit " + to);
        }
        double left = shareBelow(centre, spread, to) - shareBelow(centre, spread, from);
        double leftAbove = shareBelow(-centre, spread, -from) - shareBelow(-centre, spread, -to);
        if (Math.max(left, leftAbove) < LEAST_LEFT) {
            throw new IllegalArgumentException("Limits of the normal distribution are " + from + " and " + to
                    + " but must leave at least a millionth of the curve with mean " + centre
                    + " and standard deviation " + spread);
        }
    }

    /** The whole curve. */
    public static Normal of(double mean, double sd) {
        return new Normal(mean, sd, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    private static double shareBelow(double centre, double spread, double value) {
        return NormalQuantile.shareBelow((value - centre) / spread);
    }

    /** Taken from the side on which the tail is, so that no digits are lost. */
    @Override
    public double quantile(double share) {
        Checks.within("Share", share, 0, 1);
        double value = from > centre ? -mirrored(-to, -from, -centre, 1 - share) : mirrored(from, to, centre, share);
        return Math.min(to, Math.max(from, value));
    }

    private double mirrored(double low, double high, double middle, double share) {
        double below = shareBelow(middle, spread, low);
        return middle + spread * NormalQuantile.of(below + share * (shareBelow(middle, spread, high) - below));
    }

    @Override
    public double mean() {
        return centre + spread * firstMoment();
    }

    /** Variance of a cut curve: 1 + (a φ(a) − b φ(b)) / Z − ((φ(a) − φ(b)) / Z)², in squares of the spread. */
    @Override
    public double sd() {
        double first = firstMoment();
        return spread * Math.sqrt(1 + (weighted(deviations(from)) - weighted(deviations(to))) / left() - first * first);
    }

    private double firstMoment() {
        return (NormalQuantile.density(deviations(from)) - NormalQuantile.density(deviations(to))) / left();
    }

    /** Share of the whole curve between the limits. */
    private double left() {
        double a = deviations(from);
        double b = deviations(to);
        return a > 0 ? NormalQuantile.shareBelow(-a) - NormalQuantile.shareBelow(-b)
                : NormalQuantile.shareBelow(b) - NormalQuantile.shareBelow(a);
    }

    private double deviations(double value) {
        return (value - centre) / spread;
    }

    private static double weighted(double deviations) {
        return Double.isInfinite(deviations) ? 0 : deviations * NormalQuantile.density(deviations);
    }
}
