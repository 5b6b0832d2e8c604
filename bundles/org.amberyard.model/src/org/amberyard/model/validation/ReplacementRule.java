package org.amberyard.model.validation;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansPackage.Literals;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.routes.Route;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.VehicleType;
import org.eclipse.emf.ecore.EReference;

/** Replacements can be carried out: once a year for each bus, and with buses that suit the routes. */
final class ReplacementRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        for (Plan plan : study.getPlans()) {
            Set<List<Object>> seen = new HashSet<>();
            for (Replacement step : plan.getReplacements()) {
                if (step.getBus() != null) {
                    if (!seen.add(List.of(step.getBus(), step.getYear()))) {
                        findings.error(step, Literals.REPLACEMENT__BUS, "bus " + ElementNames.of(step.getBus())
                                + " is replaced more than once in " + step.getYear() + "; keep one.");
                    }
                    checkTypes(plan, step, findings);
                }
            }
        }
    }

    private static void checkTypes(Plan plan, Replacement step, Findings findings) {
        checkBody(step, Literals.REPLACEMENT__NEW_TYPE, step.getNewType(), step.getBus(), findings);
        if (step.getCascadeTo() == step.getBus()) {
            findings.error(step, Literals.REPLACEMENT__CASCADE_TO, "the old bus moves to its own place; choose another or "
                    + "clear the field to sell it.");
        } else if (step.getCascadeTo() != null) {
            VehicleType outgoing = new PlanSteps(plan).typeBefore(step.getBus(), step.getYear());
            checkBody(step, Literals.REPLACEMENT__CASCADE_TO, outgoing, step.getCascadeTo(), findings);
        }
    }

    private static void checkBody(Replacement step, EReference field, VehicleType type, Bus place, Findings findings) {
        Route route = place.getRoute();
        if (type != null && !BodyFit.suits(type, place)) {
            findings.error(step, field, ElementNames.of(type) + " is a type " + type.getBodyType().getLiteral()
                    + " bus but bus " + ElementNames.of(place) + " runs route " + ElementNames.of(route)
                    + ", which needs a type " + route.getBodyType().getLiteral() + " bus; choose another.");
        }
    }
}
