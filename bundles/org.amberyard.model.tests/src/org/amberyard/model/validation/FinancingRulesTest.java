package org.amberyard.model.validation;

import org.amberyard.model.SmallStudy;
import org.amberyard.model.plans.FinancedPurchases;
import org.amberyard.model.plans.Financing;
import org.amberyard.model.plans.FinancingKind;
import org.amberyard.model.plans.PaymentInterval;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.plans.Repayment;
import org.junit.jupiter.api.Test;

class FinancingRulesTest {
    private final SmallStudy small = new SmallStudy();
    private final Financing loan = add("Bank", FinancingKind.LOAN);

    private Financing add(String name, FinancingKind kind) {
        Financing financing = PlansFactory.eINSTANCE.createFinancing();
        financing.setName(name);
        financing.setKind(kind);
        small.plan.getFinancing().add(financing);
        return financing;
    }

    @Test
    void aLoanWithTheDefaultTermsIsRight() {
        Said.of(small);
    }

    @Test
    void yearsAreInOrder() {
        loan.setFirstYear(2030);
        loan.setLastYear(2028);
        Said.of(small, "ERROR: Financing Bank of plan Electric: its first year 2030 is after its last year 2028; "
                + "were they swapped?");
    }

    @Test
    void aLoanRepaysSomething() {
        loan.setYears(2);
        loan.setInterval(PaymentInterval.QUARTERLY);
        loan.setInterestOnlyPayments(8);
        Said.of(small, "ERROR: Financing Bank of plan Electric: it has 8 payments of which 8 are interest only; leave at least "
                + "one that repays.");
    }

    @Test
    void onlyATermBondHasASinkingFund() {
        loan.setSinkingFund(true);
        Said.of(small, "ERROR: Financing Bank of plan Electric: only bonds repaid at the end have a sinking fund; choose that "
                + "repayment or do without the fund.");
        loan.setKind(FinancingKind.BOND);
        loan.setRepayment(Repayment.AT_END);
        Said.of(small);
    }

    @Test
    void nothingIsFinancedTwice() {
        loan.setShare(0.6);
        Financing bonds = add("Bonds", FinancingKind.BOND);
        bonds.setCovers(FinancedPurchases.BUSES);
        bonds.setShare(0.5);
        bonds.setFirstYear(2028);
        Said.of(small, "ERROR: Financing Bonds of plan Electric: with it 110 % of the buses of 2028 are financed; together it may "
                + "be at most 100 %.");
        loan.setLastYear(2027);
        Said.of(small);
    }

    @Test
    void sharesThatCoverDifferentThingsDoNotAddUp() {
        loan.setCovers(FinancedPurchases.PORTS_AND_WORKS);
        add("Bonds", FinancingKind.BOND).setCovers(FinancedPurchases.BUSES);
        add("Savings", FinancingKind.CASH);
        Said.of(small);
    }
}
