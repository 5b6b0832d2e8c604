package org.amberyard.model.validation;

import org.amberyard.model.plans.Financing;
import org.amberyard.model.plans.FinancingKind;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansPackage.Literals;
import org.amberyard.model.plans.Repayment;
import org.amberyard.model.study.Study;

/** Terms of a financing fit together. */
final class FinancingRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        for (Plan plan : study.getPlans()) {
            plan.getFinancing().stream().filter(f -> f.getKind() != FinancingKind.CASH).forEach(f -> {
                check(f, findings);
                checkDrawn(f, study, findings);
            });
        }
    }

    private static void check(Financing financing, Findings findings) {
        if (financing.getLastYear() != 0 && financing.getFirstYear() > financing.getLastYear()) {
            findings.error(financing, Literals.FINANCING__LAST_YEAR, "its first year " + financing.getFirstYear()
                    + " is after its last year " + financing.getLastYear() + "; were they swapped?");
        }
        int payments = financing.getYears() * financing.getInterval().getValue();
        if (financing.getKind() == FinancingKind.LOAN && financing.getInterestOnlyPayments() >= payments) {
            findings.error(financing, Literals.FINANCING__INTEREST_ONLY_PAYMENTS, "it has " + payments + " payments of which "
                    + financing.getInterestOnlyPayments() + " are interest only; leave at least one that repays.");
        }
        boolean bondAtEnd = financing.getKind() == FinancingKind.BOND && financing.getRepayment() == Repayment.AT_END;
        if (financing.isSinkingFund() && !bondAtEnd) {
            findings.error(financing, Literals.FINANCING__SINKING_FUND, "only bonds repaid at the end have a sinking fund; "
                    + "choose that repayment or do without the fund.");
        }
    }

    private static void checkDrawn(Financing financing, Study study, Findings findings) {
        if (study.getSettings() == null || financing.getDrawnSum() <= 0) {
            return;
        }
        int base = study.getSettings().getBaseYear();
        int drawn = financing.getDrawnYear();
        if (drawn == 0 || drawn >= base) {
            findings.error(financing, Literals.FINANCING__DRAWN_YEAR, findings.fact(financing, Literals.FINANCING__DRAWN_YEAR)
                    + "; a sum that is drawn already needs a year before the base year " + base + ".");
        }
    }
}
