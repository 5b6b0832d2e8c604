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
    private final int samples;
    private final FitErrors missed;

    /**
     * Of results.
     *
     * @param groups names of the groups of inputs
     * @param presentCosts by plan and evaluation
     * @param baseline place of the baseline among the plans
     * @param seed any number
     * @param samples independent samples that rows of evaluations were taken from in turn; 1 where there is only one
     * @param missed by how much results are missed that are read off a surface
     */
    public VarianceShares(List<String> groups, double[][] presentCosts, int baseline, long seed, int samples, FitErrors missed) {
        this.groups = groups;
        this.presentCosts = presentCosts;
        this.baseline = baseline;
        this.seed = seed;
        this.samples = samples;
        this.missed = missed;
    }

    /** Names of the inputs; groups of the study, and inputs that are correlated, stand together. */
    public List<String> groups() {
        return groups;
    }

    /** By how much results are missed that are read off a surface. */
    public FitErrors missed() {
        return missed;
    }

    /** Shares of the variance of the saving of a plan: present cost of the baseline less its own. */
    public SobolIndices ofSaving(int plan) {
        double[] savings = PlanDraws.of(presentCosts).difference(baseline, plan);
        return samples > 1 ? SobolIndices.ofSamples(savings, groups.size(), samples, CONFIDENCE)
                : SobolIndices.of(savings, groups.size(), new SobolIndices.Bootstrap(BOOTSTRAP_SAMPLES, CONFIDENCE, seed));
    }

    /** Where the 95 % intervals come from, in words. */
    public String intervals() {
        return samples > 1 ? "from the scatter of " + samples + " independent samples (Student)"
                : "from rows drawn again (bootstrap), which takes rows for independent; rows of an even sample scatter less";
    }

    /** What groups explain by themselves, added up: at most all. */
    public static double together(SobolIndices shares, List<Integer> groups) {
        return Math.min(1, groups.stream().mapToDouble(g -> Math.max(0, shares.first().get(g).value())).sum());
    }

    /** Which decide, and what they explain together, as in “Diesel price and Grant explain 71 % of the variance”; blank where none does. */
    public String explained(SobolIndices shares) {
        List<Integer> deciding = deciding(shares);
        if (deciding.isEmpty()) {
            return "";
        }
        List<String> named = deciding.stream().map(groups::get).toList();
        int last = named.size() - 1;
        String names = last == 0 ? named.get(0) : String.join(", ", named.subList(0, last)) + " and " + named.get(last);
        return names + (last == 0 ? " explains " : " explain ") + Math.round(100 * together(shares, deciding)) + " % of the variance";
    }

    /** Places of the groups that decide: those that explain a twentieth or more by themselves, what explains most first. */
    public static List<Integer> deciding(SobolIndices shares) {
        List<Band> first = shares.first();
        return IntStream.range(0, first.size()).boxed().filter(g -> first.get(g).value() >= LEAST_NAMED)
                .sorted(Comparator.comparingDouble((Integer g) -> -first.get(g).value())).toList();
    }
}
