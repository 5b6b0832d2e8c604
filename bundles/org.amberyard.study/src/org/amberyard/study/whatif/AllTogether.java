package org.amberyard.study.whatif;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.whatif.BudgetRisk;
import org.amberyard.core.whatif.Moments;
import org.amberyard.core.whatif.PlanDraws;
import org.amberyard.core.whatif.RunEnd;
import org.amberyard.core.whatif.SortedDraws;

/** Plans in draws of all uncertain inputs together. */
public final class AllTogether {
    private final StudyResult base;
    private final RunEnd end;
    private final double[][] presentCosts;
    private final double[][][] appropriations;
    private final double[] wholly;

    AllTogether(StudyResult base, RunEnd end, double[][] presentCosts, double[][][] appropriations, double[] wholly) {
        this.wholly = wholly;
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

    /** Present cost of a plan in each draw, in their order. */
    public double[] presentCosts(int plan) {
        return presentCosts[plan].clone();
    }

    /** Present cost of a plan over the draws. */
    public SortedDraws presentCost(int plan) {
        return SortedDraws.of(presentCosts[plan]);
    }

    /** Mean and scatter of the present cost of a plan. */
    public Moments moments(int plan) {
        return Moments.of(presentCosts[plan]);
    }

    /** Plans draw by draw: which is cheaper how often, and regret. */
    public PlanDraws plans() {
        return PlanDraws.of(presentCosts);
    }

    /** What must be appropriated for a plan in a year over the draws. */
    public SortedDraws appropriation(int plan, int year) {
        return SortedDraws.of(appropriations[plan][year]);
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
