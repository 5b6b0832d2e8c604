package org.amberyard.core.variants;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.whatif.Band;
import org.amberyard.core.whatif.PlanDraws;
import org.amberyard.core.whatif.SobolIndices;

/** What uncertain inputs explain of the variance of results. */
public final class VarianceShares {
    private static final int BOOTSTRAP_SAMPLES = 500;
    private static final double CONFIDENCE = 0.95;
    /** Inputs that explain less are not named. */
    private static final double LEAST_NAMED = 0.05;

    private final List<String> groups;
    private final double[][] presentCosts;
    private final int baseline;
    private final long seed;
    private final FitErrors missed;

    /**
     * Of results.
     *
     * @param groups names of the groups of inputs
     * @param presentCosts by plan and evaluation
     * @param baseline place of the baseline among the plans
     * @param seed any number
     * @param missed by how much results are missed that are read off a surface
     */
    public VarianceShares(List<String> groups, double[][] presentCosts, int baseline, long seed, FitErrors missed) {
        this.groups = groups;
        this.presentCosts = presentCosts;
        this.baseline = baseline;
        this.seed = seed;
        this.missed = missed;
    }

    /** Names of the inputs; those that are correlated stand together. */
    public List<String> groups() {
        return groups;
    }

    /** By how much results are missed that are read off a surface. */
    public FitErrors missed() {
        return missed;
    }

    /** Shares of the variance of the saving of a plan: present cost of the baseline less its own. */
    public SobolIndices ofSaving(int plan) {
        return SobolIndices.of(PlanDraws.of(presentCosts).difference(baseline, plan), groups.size(),
                new SobolIndices.Bootstrap(BOOTSTRAP_SAMPLES, CONFIDENCE, seed));
    }

    /** Places of the groups that decide: those that explain a twentieth or more by themselves, what explains most first. */
    public static List<Integer> deciding(SobolIndices shares) {
        List<Band> first = shares.first();
        return IntStream.range(0, first.size()).boxed().filter(g -> first.get(g).value() >= LEAST_NAMED)
                .sorted(Comparator.comparingDouble((Integer g) -> -first.get(g).value())).toList();
    }
}
