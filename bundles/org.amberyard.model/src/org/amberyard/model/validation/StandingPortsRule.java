package org.amberyard.model.validation;

import java.util.Map;
import java.util.TreeMap;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansPackage.Literals;
import org.amberyard.model.plans.PortPurchase;
import org.amberyard.model.plans.WorkOrder;
import org.amberyard.model.study.Study;

/** Ports and works of the years before the base year stand whatever is planned, so all plans name the same. */
final class StandingPortsRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        if (study.getSettings() == null || study.getPlans().isEmpty()) {
            return;
        }
        int base = study.getSettings().getBaseYear();
        Plan first = study.getPlans().get(0);
        for (Plan plan : study.getPlans()) {
            if (!standing(plan, base).equals(standing(first, base))) {
                findings.warning(plan, Literals.PLAN__PORT_PURCHASES, "its ports and site works from before the base year " + base
                        + " differ from those of plan “" + first.getName() + "”; what stands is the same in every plan.");
            }
        }
    }

    private static Map<String, Integer> standing(Plan plan, int base) {
        Map<String, Integer> standing = new TreeMap<>();
        for (PortPurchase bought : plan.getPortPurchases()) {
            if (bought.getYear() < base) {
                standing.merge(bought.getYear() + " " + ElementNames.of(bought.getPortType()), bought.getCount(), Integer::sum);
            }
        }
        for (WorkOrder order : plan.getWorkOrders()) {
            if (order.getYear() < base) {
                standing.merge(ElementNames.of(order), 1, Integer::sum);
            }
        }
        return standing;
    }
}
