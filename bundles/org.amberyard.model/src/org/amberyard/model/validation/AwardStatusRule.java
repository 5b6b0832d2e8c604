package org.amberyard.model.validation;

import org.amberyard.model.funding.AwardStatus;
import org.amberyard.model.funding.FundingPackage.Literals;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansPackage;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

/** How far money is said to be secured agrees with how it is counted, and what is committed has a letter. */
final class AwardStatusRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        study.getProgrammes().forEach(p -> checkProgramme(p, findings));
        study.getProgrammes().forEach(p -> checkSaid(study, p, findings));
        study.getPlans().forEach(p -> checkOwn(study, p, findings));
    }

    private static void checkProgramme(Programme programme, Findings findings) {
        AwardStatus status = programme.getStatus();
        boolean certain = programme.getProbability() >= 1;
        if (isOpen(status) && certain) {
            findings.warning(programme, Literals.PROGRAMME__PROBABILITY, "its status is “" + status.getLiteral() + "”, yet its award is "
                    + "counted as certain; enter how probable it is.");
        }
        if (status == AwardStatus.COMMITTED && !certain) {
            findings.warning(programme, Literals.PROGRAMME__STATUS, "its status is “" + status.getLiteral() + "”, yet its "
                    + findings.fact(programme, Literals.PROGRAMME__PROBABILITY) + "; one of the two is not so.");
        }
        checkLetter(programme, status, Literals.PROGRAMME__LETTER, findings);
    }

    /** Money that a plan counts on as certain, of which nobody has said how far it is. */
    private static void checkSaid(Study study, Programme programme, Findings findings) {
        if (programme.getStatus() == AwardStatus.NOT_SAID && programme.getProbability() >= 1
                && study.getPlans().stream().anyMatch(plan -> isNamed(plan, programme))) {
            findings.warning(programme, Literals.PROGRAMME__STATUS, "its award is counted as certain, but its status is not said; enter how far it is "
                    + "secured, or how probable it is.");
        }
    }

    private static void checkOwn(Study study, Plan plan, Findings findings) {
        checkLetter(plan, plan.getOwnStatus(), PlansPackage.Literals.PLAN__OWN_LETTER, findings);
        if (isOpen(plan.getOwnStatus())) {
            study.getProgrammes().stream().filter(p -> p.getMatchShare() > 0).filter(p -> isNamed(plan, p)).forEach(p -> findings.warning(
                    plan, PlansPackage.Literals.PLAN__OWN_STATUS, "its own money is the match of “" + p.getName() + "” and only “"
                            + plan.getOwnStatus().getLiteral() + "”; applications ask for a letter or resolution that commits it."));
        }
    }

    private static boolean isNamed(Plan plan, Programme programme) {
        return plan.getReplacements().stream().anyMatch(r -> r.getProgrammes().contains(programme))
                || plan.getPortPurchases().stream().anyMatch(p -> p.getProgrammes().contains(programme))
                || plan.getWorkOrders().stream().anyMatch(w -> w.getProgrammes().contains(programme))
                || plan.getOneOffCosts().stream().anyMatch(c -> c.getProgrammes().contains(programme));
    }

    private static boolean isOpen(AwardStatus status) {
        return status == AwardStatus.PLANNED || status == AwardStatus.APPLIED;
    }

    private static void checkLetter(EObject element, AwardStatus status, EAttribute letter, Findings findings) {
        String text = (String) element.eGet(letter);
        if (status == AwardStatus.COMMITTED && (text == null || text.isBlank())) {
            findings.info(element, letter, "it is said to be committed, but no letter or document is named that says so.");
        }
    }
}
