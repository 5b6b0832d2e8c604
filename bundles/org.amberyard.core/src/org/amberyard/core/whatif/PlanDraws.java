package org.amberyard.core.whatif;

import java.util.Arrays;
import org.amberyard.core.math.Checks;

/** Costs of plans in the same draws: which is cheaper how often, and what a choice is regretted by. */
public final class PlanDraws {
    private final double[][] costs;

    private PlanDraws(double[][] costs) {
        this.costs = costs;
    }

    /**
     * Of costs of the same draws.
     *
     * @param costs by plan and draw, constant money; not to be changed afterwards
     */
    public static PlanDraws of(double[]... costs) {
        Checks.atLeast("Number of plans", costs.length, 1);
        for (double[] plan : costs) {
            if (plan.length != costs[0].length) {
                throw new IllegalArgumentException("Number of draws of a plan is " + plan.length
                        + " but must be that of the first, " + costs[0].length);
            }
        }
        return new PlanDraws(costs.clone());
    }

    /** How likely a plan is to cost less than another; draws in which they cost the same do not count for it. */
    public Chance cheaper(int plan, int other) {
        long hits = 0;
        for (int draw = 0; draw < draws(); draw++) {
            hits += costs[plan][draw] < costs[other][draw] ? 1 : 0;
        }
        return new Chance(hits, draws());
    }

    /** How likely no other plan costs less; plans that cost the same are all counted. */
    public Chance best(int plan) {
        long hits = 0;
        for (int draw = 0; draw < draws(); draw++) {
            hits += costs[plan][draw] <= cheapest(draw) ? 1 : 0;
        }
        return new Chance(hits, draws());
    }

    /** Cost of a plan less that of another in each draw. */
    public double[] difference(int plan, int other) {
        double[] difference = new double[draws()];
        Arrays.setAll(difference, draw -> costs[plan][draw] - costs[other][draw]);
        return difference;
    }

    /** What a plan costs more than the cheapest plan of each draw; 0 where it is the cheapest. */
    public double[] regret(int plan) {
        double[] regret = new double[draws()];
        Arrays.setAll(regret, draw -> costs[plan][draw] - cheapest(draw));
        return regret;
    }

    private double cheapest(int draw) {
        double least = costs[0][draw];
        for (double[] plan : costs) {
            least = Math.min(least, plan[draw]);
        }
        return least;
    }

    private int draws() {
        return costs[0].length;
    }
}
