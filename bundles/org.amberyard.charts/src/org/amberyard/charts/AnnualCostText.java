package org.amberyard.charts;

import org.amberyard.core.money.CostLedger;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;

/** The annual cost chart in words. */
final class AnnualCostText {
    private final StudyResult result;
    private final StudyInput study;

    AnnualCostText(StudyResult result) {
        this.result = result;
        this.study = result.input();
    }

    String sentences() {
        int last = study.baseYear() + study.years() - 1;
        StringBuilder text = new StringBuilder("Annual cost from " + study.baseYear() + " to " + last + " in "
                + StatedMoney.of(study) + ", after funding and what is left at the end.");
        result.plans().forEach(p -> text.append(' ').append(sentence(p)));
        return text.toString();
    }

    private String sentence(PlanResult plan) {
        CostLedger ledger = plan.ledger();
        int dearest = 0;
        double sum = 0;
        for (int year = 0; year < ledger.years(); year++) {
            sum += ledger.yearTotal(year);
            dearest = ledger.yearTotal(year) > ledger.yearTotal(dearest) ? year : dearest;
        }
        String currency = study.currency();
        return plan.name() + ": " + Figures.money(currency, sum) + " in all, most in " + (study.baseYear() + dearest)
                + " with " + Figures.money(currency, ledger.yearTotal(dearest)) + ".";
    }
}
