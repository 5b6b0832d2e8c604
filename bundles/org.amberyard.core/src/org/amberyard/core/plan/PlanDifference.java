package org.amberyard.core.plan;

import java.util.Arrays;
import java.util.List;
import org.amberyard.core.money.CostCategory;

/**
 * From the present cost of one plan to that of another, category by category.
 *
 * @param from present cost of the plan that it starts at
 * @param steps what each category adds or takes away, in the order of the categories; those that add nothing are left out
 * @param to present cost of the plan that it ends at
 */
public record PlanDifference(double from, List<Step> steps, double to) {

    /**
     * What one category adds.
     *
     * @param category category
     * @param from its present cost in the plan that it starts at
     * @param to its present cost in the plan that it ends at
     */
    public record Step(CostCategory category, double from, double to) {

        /** What it adds; below zero where it takes away. */
        public double change() {
            return to - from;
        }
    }

    public PlanDifference {
        steps = List.copyOf(steps);
    }

    /** The way from one plan to another. */
    public static PlanDifference of(PlanResult from, PlanResult to) {
        List<Step> steps = Arrays.stream(CostCategory.values())
                .map(c -> new Step(c, from.ledger().presentValue(c), to.ledger().presentValue(c)))
                .filter(s -> s.change() != 0).toList();
        return new PlanDifference(from.measures().presentCost(), steps, to.measures().presentCost());
    }
}
