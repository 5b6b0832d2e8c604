package org.amberyard.model.validation;

import java.util.List;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.meta.DatedSteps;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.UsedBus;
import org.amberyard.model.plans.OneOffCost;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansPackage.Literals;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.VehicleType;
import org.eclipse.emf.ecore.EStructuralFeature;

/** The programmes that a step names pay for it, and may be combined. */
final class StepFundingRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        for (Plan plan : study.getPlans()) {
            for (Sourced step : DatedSteps.of(plan)) {
                EStructuralFeature field = step.eClass().getEStructuralFeature("programmes");
                List<Programme> programmes = ((List<?>) step.eGet(field)).stream().map(Programme.class::cast).toList();
                programmes.forEach(p -> checkYear(step, field, p, findings));
                checkExclusions(step, field, programmes, findings);
            }
            plan.getReplacements().forEach(step -> step.getProgrammes().forEach(p -> checkAward(step, p, findings)));
            plan.getOneOffCosts().forEach(step -> step.getProgrammes().forEach(p -> checkAward(step, p, findings)));
        }
    }

    private static void checkYear(Sourced step, EStructuralFeature field, Programme programme, Findings findings) {
        int year = DatedSteps.year(step);
        if (year < programme.getFirstYear() || year > programme.getLastYear()) {
            findings.warning(step, field, "programme " + ElementNames.of(programme) + " pays from "
                    + programme.getFirstYear() + " to " + programme.getLastYear() + ", so it pays nothing in " + year
                    + "; change the year or the programme.");
        }
    }

    private static void checkExclusions(Sourced step, EStructuralFeature field, List<Programme> programmes, Findings findings) {
        for (int i = 0; i < programmes.size(); i++) {
            for (Programme other : programmes.subList(i + 1, programmes.size())) {
                Programme one = programmes.get(i);
                if (one.getExcludes().contains(other) || other.getExcludes().contains(one)) {
                    findings.warning(step, field, "programmes " + ElementNames.of(one) + " and " + ElementNames.of(other)
                            + " may not be combined, so only the one that comes first in their order pays; keep one.");
                }
            }
        }
    }

    private static void checkAward(Replacement step, Programme payer, Findings findings) {
        VehicleType type = step.getNewType();
        if (type == null) {
            return;
        }
        String programme = "programme " + ElementNames.of(payer);
        if (!(type instanceof ElectricType)) {
            findings.warning(step, Literals.REPLACEMENT__PROGRAMMES, programme + " pays for electric buses only and "
                    + ElementNames.of(type) + " is none; clear the programme or choose an electric type.");
        } else if (payer.getBusAwards().stream().noneMatch(a -> a.getBodyType() == type.getBodyType())) {
            findings.warning(step, Literals.REPLACEMENT__PROGRAMMES, programme + " has no award for body type "
                    + type.getBodyType().getLiteral() + ", so it pays nothing; add the award or clear the programme.");
        } else if (payer.isNewOnly() && UsedBus.isBoughtBy(step)) {
            findings.warning(step, Literals.REPLACEMENT__PROGRAMMES, programme + " pays for new buses only and this one is used, so "
                    + "it pays nothing; clear the programme or buy a new bus.");
        }
    }

    private static void checkAward(OneOffCost step, Programme payer, Findings findings) {
        if (payer.getTrainingShare() == 0) {
            findings.warning(step, Literals.ONE_OFF_COST__PROGRAMMES, "programme " + ElementNames.of(payer)
                    + " pays no share of training, so it pays nothing; enter the share or clear the programme.");
        }
    }
}
