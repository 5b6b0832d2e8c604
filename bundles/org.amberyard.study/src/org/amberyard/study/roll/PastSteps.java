package org.amberyard.study.roll;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Steps of a plan in the years that are over when a study is rolled. */
public final class PastSteps {
    private PastSteps() {
    }

    /** Steps that fall from one year on and before another, buses first. */
    public static List<Sourced> of(Plan plan, int from, int before) {
        List<Sourced> all = new ArrayList<>(plan.getReplacements());
        all.addAll(plan.getPortPurchases());
        all.addAll(plan.getWorkOrders());
        all.addAll(plan.getOneOffCosts());
        return all.stream().filter(s -> year(s) >= from && year(s) < before).toList();
    }

    private static int year(Sourced step) {
        EStructuralFeature year = step.eClass().getEStructuralFeature("year");
        return (int) step.eGet(year);
    }

    /** The only plan, or the only one beside the baseline; empty where there are several. */
    public static Optional<Plan> likelyCarriedOut(Study study) {
        List<Plan> others = study.getPlans().stream().filter(p -> study.getPlans().size() == 1 || p != study.getBaseline()).toList();
        return others.size() == 1 ? Optional.of(others.get(0)) : Optional.empty();
    }
}
