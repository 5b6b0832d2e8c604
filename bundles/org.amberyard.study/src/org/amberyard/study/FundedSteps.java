package org.amberyard.study;

import java.util.List;
import java.util.stream.Stream;
import org.amberyard.core.funding.Purchase;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EObject;

/** Finds the step of a plan that a purchase comes from, so that findings lead to it. */
final class FundedSteps {
    private final Study study;
    private final Plan plan;

    FundedSteps(Study study, int plan) {
        this.study = study;
        this.plan = study.getPlans().get(plan);
    }

    /** The step; the plan itself where a rule buys the bus. */
    EObject of(Purchase purchase) {
        int year = study.getSettings().getBaseYear() + purchase.year();
        Stream<? extends EObject> candidates = switch (purchase.kind()) {
            case BUS -> plan.getReplacements().stream().filter(r -> r.getYear() == year
                    && r.getBus() == study.getBuses().get(purchase.row()));
            case PORTS -> plan.getPortPurchases().stream().filter(p -> p.getYear() == year
                    && purchase.name().equals(p.getCount() + " × " + p.getPortType().getName()));
            case SITE_WORK -> plan.getWorkOrders().stream().filter(w -> w.getYear() == year
                    && purchase.name().equals(w.getWork().getName()));
            case TRAINING -> plan.getOneOffCosts().stream().filter(c -> c.getYear() == year && purchase.name().equals(c.getName()));
        };
        List<? extends EObject> found = candidates.toList();
        return found.isEmpty() ? plan : found.get(0);
    }
}
