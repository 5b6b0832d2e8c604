package org.amberyard.model.validation;

import java.util.OptionalInt;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansPackage.Literals;
import org.amberyard.model.plans.PortPurchase;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;

/** Electric buses find a port when they arrive. */
final class FirstPortRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        for (Plan plan : study.getPlans()) {
            OptionalInt first = plan.getPortPurchases().stream().filter(p -> p.getCount() > 0)
                    .mapToInt(PortPurchase::getYear).min();
            for (Replacement step : plan.getReplacements()) {
                if (step.getNewType() instanceof ElectricType && tooEarly(step.getYear(), first)) {
                    findings.warning(step, Literals.REPLACEMENT__YEAR, ElementNames.of(step.getBus()) + " is electric from "
                            + step.getYear() + " but " + ports(first) + "; buy ports in time.");
                }
            }
            checkPresentFleet(study, plan, first, findings);
        }
    }

    private static void checkPresentFleet(Study study, Plan plan, OptionalInt first, Findings findings) {
        if (study.getSettings() == null || !tooEarly(study.getSettings().getBaseYear(), first)) {
            return;
        }
        for (Bus bus : study.getBuses()) {
            if (bus.getType() instanceof ElectricType) {
                findings.warning(plan, Literals.PLAN__PORT_PURCHASES, ElementNames.of(bus) + " is electric today but "
                        + ports(first) + "; enter the present ports with the year in which they were bought.");
                return;
            }
        }
    }

    private static boolean tooEarly(int year, OptionalInt firstPort) {
        return firstPort.isEmpty() || year < firstPort.getAsInt();
    }

    private static String ports(OptionalInt first) {
        return first.isPresent() ? "the plan's first port comes in " + first.getAsInt() : "the plan buys no port";
    }
}
