package org.amberyard.core.whatif;

import org.amberyard.core.math.Checks;

/**
 * What a cost does to a budget over the draws.
 *
 * @param atRisk value at risk: what a cost goes over the budget at most with the confidence asked for; below zero when
 *             it stays under it
 * @param over how likely the cost is above the budget
 */
public record BudgetRisk(double atRisk, Chance over) {

    /**
     * Of a cost.
     *
     * @param budget what there is, in the money of the cost
     * @param confidence above 0 and below 1, such as 0.95
     */
    public static BudgetRisk of(SortedDraws cost, double budget, double confidence) {
        Checks.within("Confidence", confidence, Double.MIN_VALUE, Math.nextDown(1.0));
        return new BudgetRisk(cost.quantile(confidence) - budget,
                new Chance(cost.above(budget), cost.count()));
    }
}
