package org.amberyard.model.validation;

import org.amberyard.model.common.Sourced;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansPackage.Literals;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.VehicleType;
import org.eclipse.emf.ecore.EStructuralFeature;

/** A programme that a step names pays for it. */
final class StepFundingRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        for (Plan plan : study.getPlans()) {
            for (Sourced step : new PlanSteps(plan).all()) {
                EStructuralFeature field = step.eClass().getEStructuralFeature("programme");
                if (field != null && step.eGet(field) instanceof Programme programme) {
                    checkYear(step, field, programme, findings);
                }
            }
            plan.getReplacements().forEach(step -> checkAward(step, findings));
        }
    }

    private static void checkYear(Sourced step, EStructuralFeature field, Programme programme, Findings findings) {
        int year = (int) step.eGet(step.eClass().getEStructuralFeature("year"));
        if (year < programme.getFirstYear() || year > programme.getLastYear()) {
            findings.warning(step, field, "programme " + ElementNames.of(programme) + " pays from "
                    + programme.getFirstYear() + " to " + programme.getLastYear() + ", so it pays nothing in " + year
                    + "; change the year or the programme.");
        }
    }

    private static void checkAward(Replacement step, Findings findings) {
        VehicleType type = step.getNewType();
        if (type == null || step.getProgramme() == null) {
            return;
        }
        String programme = "programme " + ElementNames.of(step.getProgramme());
        if (!(type instanceof ElectricType)) {
            findings.warning(step, Literals.REPLACEMENT__PROGRAMME, programme + " pays for electric buses only and "
                    + ElementNames.of(type) + " is none; clear the programme or choose an electric type.");
        } else if (step.getProgramme().getBusAwards().stream().noneMatch(a -> a.getBodyType() == type.getBodyType())) {
            findings.warning(step, Literals.REPLACEMENT__PROGRAMME, programme + " has no award for body type "
                    + type.getBodyType().getLiteral() + ", so it pays nothing; add the award or clear the programme.");
        }
    }
}
