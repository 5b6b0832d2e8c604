package org.amberyard.core.whatif;

import java.util.Arrays;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * By how much a result is missed that a surface stands in for, found on independent draws that were evaluated and kept out of the
 * fit; in the unit of the result.
 *
 * @param within what the misses of 95 draws of a hundred stay within, said with a confidence of 95 % whatever their distribution
 * @param largest the largest that was seen
 * @param mean the result less the surface on average
 * @param meanReach how far that is known to both sides: its 95 % interval by Student's distribution ("The probable error of a mean",
 *     Biometrika 6 (1908), 1–25, from memory), which misses that are rarer than the draws were many can escape
 */
public record Miss(double within, double largest, double mean, double meanReach) {
    /** Share of draws that stay within the bound. */
    public static final double SHARE = 0.95;
    /** Of a result that is evaluated. */
    public static final Miss NONE = new Miss(0, 0, 0, 0);

    private static final double CONFIDENCE = 0.95;
    private static final ToleranceBound BOUND = new ToleranceBound(SHARE, CONFIDENCE);

    /** Draws that a bound takes: so few that it is the largest of them. */
    public static int draws() {
        return BOUND.draws(0);
    }

    /**
     * Of draws that were kept out.
     *
     * @param missed by draw: the result less the surface; two or more
     */
    public static Miss of(double[] missed) {
        double[] sizes = Arrays.stream(missed).map(Math::abs).toArray();
        Moments moments = Moments.of(missed);
        double reach = new TDistribution(missed.length - 1.0).inverseCumulativeProbability((1 + CONFIDENCE) / 2) * moments.standardError();
        return new Miss(BOUND.of(sizes), Arrays.stream(sizes).max().orElse(0), moments.mean(), reach);
    }

    /**
     * A percentile of all draws, and where it lies if each were evaluated: draws of the share that the bound does not speak for may
     * be anywhere, the others are moved by the bound at most.
     *
     * @param share share of draws below the percentile
     */
    public Band percentile(SortedDraws draws, double share) {
        double silent = within == 0 ? 0 : 1 - SHARE;
        return new Band(draws.quantile(share), draws.quantile(Math.max(0, share - silent)) - within,
                draws.quantile(Math.min(1, share + silent)) + within);
    }
}
