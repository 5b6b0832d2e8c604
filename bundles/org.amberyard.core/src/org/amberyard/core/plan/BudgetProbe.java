package org.amberyard.core.plan;

import java.util.List;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.yard.YardYear;

/**
 * Budgets of variants of a plan that differ in the years of its replacements. Fleet, upkeep, awards, debts and taxes are those of
 * the variant; the electric bills are those of a plan that has been evaluated, because charging its buses takes long. So variants
 * can be ranked; what is chosen must be evaluated whole.
 */
final class BudgetProbe {
    private final StudyInput study;
    private final DutyTable duty;
    private final StudyFigures figures;
    private final List<YardYear> yards;

    /** @param yards the yard by year of the plan that has been evaluated */
    BudgetProbe(StudyResult result, List<YardYear> yards) {
        this.study = result.input();
        this.duty = result.duty();
        this.figures = result.figures();
        this.yards = yards;
    }

    /**
     * What a variant comes to.
     *
     * @param budget what must be appropriated, by year
     * @param presentCost present cost after financing
     */
    record Probed(List<BudgetYear> budget, double presentCost) {

        static Probed of(PlanResult result) {
            return new Probed(result.finance().budget(), result.presentCostAfterFinancing());
        }

        /** What all years together are above the cap, whole cents. */
        long excessCents() {
            return Math.round(budget.stream().mapToDouble(y -> y.aboveCap().orElse(0)).sum() * 100);
        }

        /**
         * How far the years are from keeping the cap: the sum of the squares of what each is above it, in whole cents. So many years a
         * little above weigh less than one far above.
         */
        double strain() {
            return budget.stream().mapToDouble(y -> Math.rint(y.aboveCap().orElse(0) * 100)).map(c -> c * c).sum();
        }

        boolean isAbove(int year) {
            return budget.get(year).aboveCap().orElse(0) > 0;
        }
    }

    Probed of(PlanInput plan) {
        PlanCourse course = PlanCourse.of(study, plan, duty, figures, new PortFleet(study.depot(), plan.ports()), driven -> yards);
        PlanCosts costs = PlanCosts.of(study, plan, course);
        PlanFinance finance = PlanFinance.of(study, plan, course.fleet(), costs);
        return new Probed(finance.budget(), costs.ledger().presentValue() + finance.ledger().presentValue());
    }
}
