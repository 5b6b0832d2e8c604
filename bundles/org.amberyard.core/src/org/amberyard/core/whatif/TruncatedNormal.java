package org.amberyard.core.whatif;

import java.util.Objects;
import org.amberyard.core.math.Checks;

/** The bell curve cut off at one or both sides; what is cut off is spread over what is left in proportion. */
public final class TruncatedNormal implements Distribution {
    private static final double LEAST_LEFT = 1e-6;

    private final Normal whole;
    private final double from;
    private final double to;
    private final double fromDeviations;
    private final double toDeviations;
    private final double left;
    private final double outerShare;

    /**
     * A cut curve.
     *
     * @param whole the curve before it is cut
     * @param from lower limit; minus infinity for none
     * @param to upper limit, above it; infinity for none
     * @throws IllegalArgumentException when less than a millionth of the curve lies between the limits
     */
    public TruncatedNormal(Normal whole, double from, double to) {
        this.whole = whole;
        this.from = from;
        this.to = to;
        if (!(from < to)) {
            throw new IllegalArgumentException("Lower limit of the normal distribution is " + from
                    + " but must be below its upper limit " + to);
        }
        this.fromDeviations = whole.deviations(from);
        this.toDeviations = whole.deviations(to);
        this.outerShare = NormalQuantile.shareBelow(isAbove() ? -toDeviations : fromDeviations);
        this.left = NormalQuantile.shareBelow(isAbove() ? -fromDeviations : toDeviations) - outerShare;
        if (left < LEAST_LEFT) {
            throw new IllegalArgumentException("Limits of the normal distribution are " + from + " and " + to
                    + " but must leave at least a millionth of the curve with mean " + whole.mean()
                    + " and standard deviation " + whole.sd());
        }
    }

    /**
     * True when all of it is above the mean of the whole, where shares are taken from above so as to lose no digits.
     */
    private boolean isAbove() {
        return fromDeviations > 0;
    }

    @Override
    public double quantile(double share) {
        Checks.within("Share", share, 0, 1);
        double deviations = isAbove() ? -NormalQuantile.of(outerShare + (1 - share) * left)
                : NormalQuantile.of(outerShare + share * left);
        return Math.min(to, Math.max(from, whole.mean() + whole.sd() * deviations));
    }

    @Override
    public double mean() {
        return whole.mean() + whole.sd() * firstMoment();
    }

    /**
     * Variance of a cut curve: 1 + (a φ(a) − b φ(b)) / Z − ((φ(a) − φ(b)) / Z)², in squares of the whole's deviation.
     */
    @Override
    public double sd() {
        double first = firstMoment();
        return whole.sd() * Math.sqrt(1 + (weighted(fromDeviations) - weighted(toDeviations)) / left - first * first);
    }

    private double firstMoment() {
        return (NormalQuantile.density(fromDeviations) - NormalQuantile.density(toDeviations)) / left;
    }

    private static double weighted(double deviations) {
        return Double.isInfinite(deviations) ? 0 : deviations * NormalQuantile.density(deviations);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TruncatedNormal cut && whole.equals(cut.whole) && Double.compare(from, cut.from) == 0
                && Double.compare(to, cut.to) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(whole, from, to);
    }

    @Override
    public String toString() {
        return whole + " from " + from + " to " + to;
    }
}
