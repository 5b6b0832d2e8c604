package org.amberyard.core.variants;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.whatif.Band;
import org.amberyard.core.whatif.BudgetRisk;
import org.amberyard.core.whatif.Convergence;
import org.amberyard.core.whatif.Moments;
import org.amberyard.core.whatif.PlanDraws;
import org.amberyard.core.whatif.RunEnd;
import org.amberyard.core.whatif.SortedDraws;

/** Plans in draws of all uncertain inputs together. */
public final class AllTogether {
    private static final int COURSE_POINTS = 200;

    private final StudyResult base;
    private final RunEnd end;
    private final double[][] presentCosts;
    private final double[][][] appropriations;
    private final double[] wholly;
    private final int replicates;
    private final FitErrors missed;

    /**
     * Of results.
     *
     * @param presentCosts by plan and draw
     * @param appropriations by plan, year and draw
     * @param wholly by draw: 1 where it was evaluated as a whole, 0 where its prices were enough
     * @param replicates independent samples that the draws were taken from in turn
     * @param missed by how much draws are missed that are read off a surface
     */
    public AllTogether(StudyResult base, RunEnd end, double[][] presentCosts, double[][][] appropriations, double[] wholly,
            int replicates, FitErrors missed) {
        this.wholly = wholly;
        this.replicates = replicates;
        this.missed = missed;
        this.base = base;
        this.end = end;
        this.presentCosts = presentCosts;
        this.appropriations = appropriations;
    }

    /** How the run ended. */
    public RunEnd end() {
        return end;
    }

    /** Number of draws that were evaluated as a whole; the others by their prices alone. */
    public int evaluatedWholly() {
        return (int) Arrays.stream(wholly).sum();
    }

    /** By how much draws are missed that are read off a surface. */
    public FitErrors missed() {
        return missed;
    }

    /** Present cost of a plan in each draw, in their order. */
    public double[] presentCosts(int plan) {
        return presentCosts[plan].clone();
    }

    /** Present cost of a plan over the draws. */
    public SortedDraws presentCost(int plan) {
        return SortedDraws.of(presentCosts[plan]);
    }

    /**
     * A percentile of the present cost of a plan, and where it lies if each draw that is read off a surface were evaluated.
     *
     * @param share share of draws below it
     */
    public Band percentile(int plan, double share) {
        return missed.presentCosts().get(plan).percentile(presentCost(plan), share);
    }

    /** The same of its saving: present cost of the baseline less its own. */
    public Band savingPercentile(int plan, double share) {
        return missed.savings().get(plan).percentile(SortedDraws.of(plans().difference(base.input().baseline(), plan)), share);
    }

    /** Mean and scatter of the present cost of a plan. */
    public Moments moments(int plan) {
        return Moments.of(presentCosts[plan]);
    }

    /** Standard error of the mean present cost of a plan; not a number while it cannot be told. */
    public double standardError(int plan) {
        return Convergence.of(presentCosts[plan], replicates, Math.max(1, end.draws())).get(0).standardError();
    }

    /** How the mean saving of a plan settles: present cost of the baseline less its own. */
    public List<Convergence> convergence(int plan) {
        int step = Math.max(replicates, end.draws() / COURSE_POINTS);
        return Convergence.of(plans().difference(base.input().baseline(), plan), replicates, step);
    }

    /** Plans draw by draw: which is cheaper how often, and regret. */
    public PlanDraws plans() {
        return PlanDraws.of(presentCosts);
    }

    /** What must be appropriated for a plan in a year over the draws. */
    public SortedDraws appropriation(int plan, int year) {
        return SortedDraws.of(appropriations[plan][year]);
    }

    /** What has been appropriated for a plan from the start to a year, that year included, over the draws; money of the times of payment. */
    public SortedDraws spent(int plan, int year) {
        return SortedDraws.of(spentByDraw(plan, year));
    }

    /** The same of a plan less that of another. */
    public SortedDraws spentMore(int plan, int other, int year) {
        double[] difference = spentByDraw(plan, year);
        double[] less = spentByDraw(other, year);
        Arrays.setAll(difference, draw -> difference[draw] - less[draw]);
        return SortedDraws.of(difference);
    }

    private double[] spentByDraw(int plan, int year) {
        double[] sum = new double[appropriations[plan][year].length];
        for (int y = 0; y <= year; y++) {
            for (int draw = 0; draw < sum.length; draw++) {
                sum[draw] += appropriations[plan][y][draw];
            }
        }
        return sum;
    }

    /** What it costs more than the cheapest plan of each draw. */
    public SortedDraws regret(int plan) {
        return SortedDraws.of(plans().regret(plan));
    }

    /**
     * How far the appropriation of a year goes over the plan's cap, or over what the study itself appropriates where it has none.
     *
     * @param confidence above 0 and below 1
     */
    public BudgetRisk budgetRisk(int plan, int year, double confidence) {
        OptionalDouble cap = base.plans().get(plan).plan().payment().yearlyCap();
        double budget = cap.orElse(base.plans().get(plan).finance().budget().get(year).appropriation());
        return BudgetRisk.of(appropriation(plan, year), budget, confidence);
    }
}
