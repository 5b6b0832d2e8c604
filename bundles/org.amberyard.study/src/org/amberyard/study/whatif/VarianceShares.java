package org.amberyard.study.whatif;

import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.whatif.SobolIndices;

/** What uncertain inputs explain of the variance of results. */
public final class VarianceShares {
    private static final SobolIndices.Bootstrap PLAIN = new SobolIndices.Bootstrap(500, 0.95, 0);

    private final List<String> groups;
    private final double[][] presentCosts;
    private final int baseline;
    private final long seed;

    VarianceShares(List<String> groups, double[][] presentCosts, int baseline, long seed) {
        this.groups = groups;
        this.presentCosts = presentCosts;
        this.baseline = baseline;
        this.seed = seed;
    }

    /** Names of the inputs; those that are correlated stand together. */
    public List<String> groups() {
        return groups;
    }

    /** Shares of the variance of the saving of a plan: present cost of the baseline less its own. */
    public SobolIndices ofSaving(int plan) {
        double[] saving = IntStream.range(0, presentCosts[plan].length)
                .mapToDouble(e -> presentCosts[baseline][e] - presentCosts[plan][e]).toArray();
        return SobolIndices.of(saving, groups.size(), new SobolIndices.Bootstrap(PLAIN.samples(), PLAIN.confidence(), seed));
    }
}
