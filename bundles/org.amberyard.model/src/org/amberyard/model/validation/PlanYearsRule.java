package org.amberyard.model.validation;

import org.amberyard.model.common.Sourced;
import org.amberyard.model.meta.DatedSteps;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PortPurchase;
import org.amberyard.model.plans.WorkOrder;
import org.amberyard.model.study.Settings;
import org.amberyard.model.study.Study;

/** Steps of a plan fall into the years of the study; ports and works of earlier years stand already. */
final class PlanYearsRule implements Rule {
    @Override
    public void check(Study study, Findings findings) {
        Settings settings = study.getSettings();
        if (settings == null) {
            return;
        }
        int first = settings.getBaseYear();
        int last = first + settings.getHorizonYears() - 1;
        for (Plan plan : study.getPlans()) {
            for (Sourced step : DatedSteps.of(plan)) {
                int year = DatedSteps.year(step);
                if (year < first && !standing(step) || year > last) {
                    findings.warning(step, DatedSteps.yearField(step), "it has no effect because the study runs from " + first + " to " + last
                            + "; change its year or the years studied.");
                }
            }
        }
    }

    private static boolean standing(Sourced step) {
        return step instanceof PortPurchase || step instanceof WorkOrder;
    }
}
