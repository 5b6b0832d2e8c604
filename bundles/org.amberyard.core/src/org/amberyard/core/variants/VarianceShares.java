package org.amberyard.core.variants;

import java.util.List;
import org.amberyard.core.whatif.PlanDraws;
import org.amberyard.core.whatif.SobolIndices;

/** What uncertain inputs explain of the variance of results. */
public final class VarianceShares {
    private static final int BOOTSTRAP_SAMPLES = 500;
    private static final double CONFIDENCE = 0.95;

    private final List<String> groups;
    private final double[][] presentCosts;
    private final int baseline;
    private final long seed;

    public VarianceShares(List<String> groups, double[][] presentCosts, int baseline, long seed) {
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
        return SobolIndices.of(PlanDraws.of(presentCosts).difference(baseline, plan), groups.size(),
                new SobolIndices.Bootstrap(BOOTSTRAP_SAMPLES, CONFIDENCE, seed));
    }
}
