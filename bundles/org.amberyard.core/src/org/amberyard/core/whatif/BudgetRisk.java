package org.amberyard.core.whatif;

import org.amberyard.core.math.Checks;

/**
 * What a cost does to a budget over the draws.
 *
 * @param atRisk value at risk: what a cost goes over the budget at most with the confidence asked for; below zero when
 *             it stays under it
 * @param beyond mean over the budget of the draws that are worse than the value at risk, those at it counted by the
 *             share that is missing (Acerbi and Tasche, "On the coherence of expected shortfall", Journal of Banking
 *             and Finance 26 (2002), 1487–1503, from memory)
 * @param over how likely the cost is above the budget
 */
public record BudgetRisk(double atRisk, double beyond, Chance over) {

    /**
     * Of a cost.
     *
     * @param budget what there is, in the money of the cost
     * @param confidence above 0 and below 1, such as 0.95
     */
    public static BudgetRisk of(SortedDraws cost, double budget, double confidence) {
        Checks.within("Confidence", confidence, Double.MIN_VALUE, Math.nextDown(1.0));
        return new BudgetRisk(cost.quantile(confidence) - budget, worst(cost, 1 - confidence) - budget,
                new Chance(cost.above(budget), cost.count()));
    }

    private static double worst(SortedDraws cost, double share) {
        double wanted = share * cost.count();
        int whole = Math.min(cost.count() - 1, (int) wanted);
        double sum = whole * cost.meanFrom(cost.count() - whole);
        return (sum + (wanted - whole) * cost.at(cost.count() - whole - 1)) / wanted;
    }
}
