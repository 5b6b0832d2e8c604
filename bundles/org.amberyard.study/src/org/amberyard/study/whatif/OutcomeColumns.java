package org.amberyard.study.whatif;

import java.util.List;
import org.amberyard.core.plan.PlanOutcome;

/**
 * Where the results of a variant stand: for each plan its present cost, its greenhouse gas and its appropriations by year, then how
 * the variant was evaluated.
 *
 * @param plans number of plans
 * @param years number of years
 */
record OutcomeColumns(int plans, int years) {
    private static final int BEFORE_YEARS = 2;

    /** Number of columns. */
    int count() {
        return wholly() + 1;
    }

    /** Column of how a variant was evaluated: 1 as a whole, 0 by its prices alone. */
    int wholly() {
        return plans * (BEFORE_YEARS + years);
    }

    /** Column of the present cost of a plan. */
    int presentCost(int plan) {
        return plan * (BEFORE_YEARS + years);
    }

    /** Column of the greenhouse gas of a plan, kg. */
    int co2eKg(int plan) {
        return presentCost(plan) + 1;
    }

    /** Column of what must be appropriated for a plan in a year. */
    int appropriation(int plan, int year) {
        return presentCost(plan) + BEFORE_YEARS + year;
    }

    /** Writes what plans come to. */
    void write(List<PlanOutcome> outcomes, double[] results) {
        for (int plan = 0; plan < outcomes.size(); plan++) {
            PlanOutcome outcome = outcomes.get(plan);
            results[presentCost(plan)] = outcome.presentCost();
            results[co2eKg(plan)] = outcome.co2eKg();
            for (int year = 0; year < outcome.appropriations().size(); year++) {
                results[appropriation(plan, year)] = outcome.appropriations().get(year);
            }
        }
    }
}
