package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.amberyard.core.funding.Award;
import org.amberyard.core.funding.Bound;
import org.amberyard.core.funding.FundedLine;
import org.amberyard.core.funding.Purchase;
import org.amberyard.core.funding.Repayment;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Findings on the funding of a plan: awards that a condition, a budget, the tax of the operator or the cost itself
 * cuts, awards that are paid back, and how much hangs on awards that are not certain. What the study's tables alone tell, its rules have said before.
 */
final class FundingFindings {
    private final Study study;
    private final StudyResult result;
    private final PlanResult plan;
    private final FundedSteps steps;
    private final List<Finding> findings = new ArrayList<>();

    FundingFindings(Study study, StudyResult result, int plan) {
        this.study = study;
        this.result = result;
        this.plan = result.plans().get(plan);
        this.steps = new FundedSteps(study, plan);
    }

    List<Finding> list() {
        for (FundedLine line : plan.funding().awards().lines()) {
            line.awards().forEach(award -> addCut(line.purchase(), award));
        }
        plan.funding().repayments().forEach(this::addRepayment);
        study.getProgrammes().forEach(this::addUncertain);
        return List.copyOf(findings);
    }

    private void addCut(Purchase purchase, Award award) {
        if (tells(purchase, award)) {
            Bound bite = award.bite().orElseThrow();
            String paid = award.paid() == 0 ? "pays nothing" : "pays only " + money(award.paid());
            add(Severity.WARNING, purchase, name(award) + " " + paid + " of the " + money(award.asked().value())
                    + " that its rule comes to for " + place(purchase) + ": " + bite.words());
        }
    }

    /** True for limits that the plan or the facts about buses bring about; caps and shares are what a notice offers. */
    private boolean tells(Purchase purchase, Award award) {
        return switch (award.limit()) {
            case CONDITION, COST, MATCH, BUS_COUNT, YEAR_BUDGET, BUDGET, TAX -> true;
            case WINDOW -> withinYears(award, calendar(purchase.year()));
            case NONE, NO_AWARD, UNCERTAIN, EXCLUSION, CAP -> false;
        };
    }

    /** The rules of the study name steps outside the years of a programme; its delivery dates may still exclude them. */
    private boolean withinYears(Award award, int year) {
        Programme programme = study.getProgrammes().get(award.programme());
        return year >= programme.getFirstYear() && year <= programme.getLastYear();
    }

    private void addRepayment(Repayment back) {
        Purchase purchase = plan.funding().awards().lines().get(back.line()).purchase();
        Programme programme = study.getProgrammes().get(back.programme());
        add(Severity.WARNING, purchase, String.format(Locale.ROOT,
                "%s leaves in %d after %d of the %d years that %s asks for, so %s is paid back", purchase.name(),
                calendar(back.year()), back.servedYears(), programme.getHoldYears(), programme.getName(), money(back.amount())));
    }

    private void addUncertain(Programme programme) {
        double counted = plan.funding().awards().total(study.getProgrammes().indexOf(programme));
        if (programme.getProbability() < 1 && counted > 0) {
            findings.add(new Finding(Severity.INFO, programme, null, "Plan “" + plan.name() + "” counts on " + money(counted) + " of "
                    + programme.getName() + ", whose award has a probability of " + RoundedText.percent(programme.getProbability())
                    + "."));
        }
    }

    private void add(Severity severity, Purchase purchase, String text) {
        EObject step = steps.of(purchase);
        EStructuralFeature field = step.eClass().getEStructuralFeature("programmes");
        findings.add(new Finding(severity, step, field, "Plan “" + plan.name() + "”: " + text + "."));
    }

    private String name(Award award) {
        return study.getProgrammes().get(award.programme()).getName();
    }

    private String place(Purchase purchase) {
        return purchase.name() + " in " + calendar(purchase.year());
    }

    private int calendar(int year) {
        return result.input().baseYear() + year;
    }

    private String money(double amount) {
        return String.format(Locale.ROOT, "%s %,.0f", result.input().currency(), amount);
    }
}
