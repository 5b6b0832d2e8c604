package org.amberyard.core.plan;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.yard.YardMemory;

/**
 * What a plan comes to, for comparing many variants of a study.
 *
 * @param presentCost present value of all costs at the base date
 * @param appropriations what must be appropriated by year, money of the time of payment
 * @param co2eKg greenhouse gas over the study, kg
 */
public record PlanOutcome(double presentCost, List<Double> appropriations, double co2eKg) {

    public PlanOutcome {
        appropriations = List.copyOf(appropriations);
    }

    /** Of a plan that has been evaluated. */
    public static PlanOutcome of(PlanResult plan) {
        return new PlanOutcome(plan.measures().presentCost(), appropriations(plan.finance()), plan.measures().co2eKg());
    }

    /**
     * The plans of a variant of a study, in their order: costed anew where only prices differ, else found from the first stage
     * that the variant reaches. Nothing that needs more than fleet, yard and costs is worked out. The outcome depends on the
     * variant alone.
     *
     * @param variant the variant
     * @param base results of the study
     * @param yards years of yards that are known
     */
    public static List<PlanOutcome> all(StudyInput variant, StudyResult base, YardMemory yards) {
        return recosted(variant, base).orElseGet(() -> found(variant, base, yards));
    }

    /** The plans of a variant that differs in prices alone, costed anew; empty where more must be found anew. */
    public static Optional<List<PlanOutcome>> recosted(StudyInput variant, StudyResult base) {
        return StudyRecosting.of(variant, base).map(r -> r.plans().stream().map(PlanOutcome::of).toList());
    }

    private static List<PlanOutcome> found(StudyInput variant, StudyResult base, YardMemory yards) {
        DutyTable duty = variant.duty().equals(base.input().duty()) ? base.duty() : base.duty().asAsked(variant.duty());
        StudyFigures figures = base.figures().anew(variant, duty);
        return variant.plans().stream().map(plan -> {
            PlanCourse course = PlanCourse.of(variant, plan, duty, figures, yards);
            PlanCosts costs = PlanCosts.of(variant, plan, course);
            PlanFinance finance = PlanFinance.of(variant, plan, course.fleet(), costs);
            return new PlanOutcome(costs.ledger().presentValue(), appropriations(finance), co2eKg(variant, duty, course));
        }).toList();
    }

    private static List<Double> appropriations(PlanFinance finance) {
        return finance.budget().stream().map(BudgetYear::appropriation).toList();
    }

    private static double co2eKg(StudyInput study, DutyTable duty, PlanCourse course) {
        return AirYear.all(study, duty, course.fleet(), course.yards()).stream().mapToDouble(AirYear::totalKg).sum();
    }
}
