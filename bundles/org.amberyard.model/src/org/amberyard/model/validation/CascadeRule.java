package org.amberyard.model.validation;

import org.amberyard.model.funding.Programme;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansPackage.Literals;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.study.Study;

/** An old bus moves only to a place that is there for it, and only when no programme has it scrapped. */
final class CascadeRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        for (Plan plan : study.getPlans()) {
            plan.getReplacements().stream().filter(s -> s.getCascadeTo() != null && s.getCascadeTo() != s.getBus())
                    .forEach(step -> check(plan, step, findings));
        }
    }

    private static void check(Plan plan, Replacement step, Findings findings) {
        boolean taken = plan.getReplacements().stream().anyMatch(other -> other != step && other.getYear() == step.getYear()
                && (other.getBus() == step.getCascadeTo() || other.getCascadeTo() == step.getCascadeTo()));
        if (taken) {
            findings.error(step, Literals.REPLACEMENT__CASCADE_TO, "the old bus moves to the place of "
                    + ElementNames.of(step.getCascadeTo()) + ", which another step of " + step.getYear()
                    + " fills too; keep one of them.");
        }
        step.getProgrammes().stream().filter(Programme::isScrapsOldBus).forEach(programme -> findings.error(step,
                Literals.REPLACEMENT__CASCADE_TO, "programme " + ElementNames.of(programme)
                        + " has the old bus scrapped, so it cannot move to the place of " + ElementNames.of(step.getCascadeTo())
                        + "; clear the move or the programme."));
    }
}
