package org.amberyard.core.whatif;

import java.util.Objects;
import org.amberyard.core.math.Checks;

/** A log-normal value cut off at one or both sides; what is cut off is spread over what is left in proportion. */
public final class TruncatedLogNormal implements Distribution {
    private final LogNormal whole;
    private final double from;
    private final double to;
    private final TruncatedNormal logarithm;

    /**
     * A cut distribution.
     *
     * @param whole the distribution before it is cut
     * @param from lower limit; 0 or less for none
     * @param to upper limit, above it and above 0; infinity for none
     * @throws IllegalArgumentException when less than a millionth of the distribution lies between the limits
     */
    public TruncatedLogNormal(LogNormal whole, double from, double to) {
        this.whole = whole;
        this.from = Math.max(0, from);
        this.to = to;
        if (to != Double.POSITIVE_INFINITY) {
            Checks.above("Upper limit of the lognormal distribution", to, this.from);
        }
        this.logarithm = new TruncatedNormal(new Normal(whole.logMean(), whole.logSd()), Math.log(this.from), Math.log(to));
    }

    @Override
    public double quantile(double share) {
        return Math.min(to, Math.max(from, Math.exp(logarithm.quantile(share))));
    }

    @Override
    public double mean() {
        return moment(1);
    }

    @Override
    public double sd() {
        return Math.sqrt(moment(2) - moment(1) * moment(1));
    }

    /** Mean of a power k of the value: exp(kμ + k²σ²/2) times the share of the curve shifted by kσ over that of the curve. */
    private double moment(int power) {
        double shift = power * whole.logSd();
        return Math.exp(power * whole.logMean() + shift * shift / 2) * between(shift) / between(0);
    }

    private double between(double shift) {
        return NormalQuantile.shareBelow(deviations(to) - shift) - NormalQuantile.shareBelow(deviations(from) - shift);
    }

    private double deviations(double value) {
        return (Math.log(value) - whole.logMean()) / whole.logSd();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TruncatedLogNormal cut && whole.equals(cut.whole) && Double.compare(from, cut.from) == 0
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
