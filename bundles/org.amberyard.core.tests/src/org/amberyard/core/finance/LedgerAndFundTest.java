package org.amberyard.core.finance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.amberyard.core.finance.DebtSchedule.Payment;
import org.amberyard.core.money.MoneyRates;
import org.junit.jupiter.api.Test;

/** Sinking funds, debts within a year and the ledger of financing, counted by hand. */
class LedgerAndFundTest {
    private static final double CENT = 1e-9;

    /** Four deposits at 2 % a half-year hold 1,000: each is 1,000 / (1 + 1.02 + 1.02² + 1.02³). */
    @Test
    void aSinkingFundEarnsOnWhatIsInIt() {
        double deposit = 1000 / (1 + 1.02 + 1.0404 + 1.061208);
        DebtSchedule bond = new Bond(Repayment.AT_END, 0.06, 2, 0, OptionalDouble.of(0.04)).schedule(1000);
        assertEquals(List.of(0.5, 1.0, 1.5, 2.0), bond.payments().stream().map(Payment::timeYears).toList());
        assertEquals(deposit, bond.payments().get(0).fund(), CENT);
        assertEquals(2.02 * deposit, bond.payments().get(1).fund(), CENT);
        assertEquals(3.0604 * deposit, bond.payments().get(2).fund(), CENT);
        assertEquals(0, bond.payments().get(3).fund(), 0);
        assertEquals(0.02 * deposit, bond.fundEarnings(0), CENT);
        assertEquals(0.02 * (2.02 + 3.0604) * deposit, bond.fundEarnings(1), CENT);
        assertEquals(1000 - 4 * deposit, bond.fundEarnings(0) + bond.fundEarnings(1), CENT, "what the deposits lack");
        assertEquals(0, bond.fundEarnings(2), 0);
        assertEquals(2 * deposit, bond.deposits(0), CENT);
        assertEquals(1000 - 2.02 * deposit, bond.owedAfter(1), CENT);
    }

    /** 1,000 at 5 % a half-year, paid at the start of each: at the end of a year half a year's interest has accrued. */
    @Test
    void interestSinceTheLastPaymentIsOwedToo() {
        DebtSchedule loan = new Amortisation(Repayment.AT_END, 0.1, 2, 2, true, 0, 0).schedule(1000);
        assertEquals(List.of(0.0, 0.5, 1.0, 1.5), loan.payments().stream().map(Payment::timeYears).toList());
        assertEquals(1050, loan.owedAfter(1), CENT);
        assertEquals(1000, loan.owedAfter(0), CENT);
        assertEquals(50, loan.interest(0), CENT);
        assertEquals(2, loan.years());
    }

    /** 1,000 at 5 % a half-year in two payments of 1,000 × 0.05 × 1.1025 / 0.1025. */
    @Test
    void paymentsOfALeaseFallWithinTheirYears() {
        double payment = 55.125 / 0.1025;
        DebtSchedule lease = new Lease(0.1, 1, 2, false, 0, 0.03).schedule(1000);
        assertEquals(List.of(0.5, 1.0), lease.payments().stream().map(Payment::timeYears).toList());
        assertEquals(payment, lease.payments().get(0).paid(), CENT);
        assertEquals(payment, lease.payments().get(1).paid(), CENT);
        assertEquals(30, lease.fee(), CENT);
        assertEquals(List.of(0, 0, 1, 1), new Lease(0.1, 2, 2, true, 0, 0).schedule(1000).payments().stream().map(Payment::year).toList());
    }

    /** Prices rise by 2 % and money is worth 3 % a year besides: 1.02 × 1.03 - 1 is the nominal rate. */
    @Test
    void theLedgerHoldsMoneyOfTheTimeOfPayment() {
        FinanceLedger.Builder builder = new FinanceLedger.Builder(2, new MoneyRates(0.03, 0.02));
        builder.add(0, 0, FinanceLine.BORROWED, -500);
        builder.add(0, 1, FinanceLine.INTEREST, 20);
        builder.add(1, 2, FinanceLine.INTEREST, 10);
        builder.add(1, 2, FinanceLine.INTEREST, 5);
        builder.add(1, 2, FinanceLine.TAXES, -7);
        builder.add(2, 3, FinanceLine.INTEREST, 1000);
        FinanceLedger ledger = builder.build();
        assertEquals(2, ledger.years());
        assertEquals(15, ledger.amount(1, FinanceLine.INTEREST), CENT);
        assertEquals(20 - 500, ledger.amount(0, FinanceLine::cash), CENT);
        assertEquals(-7, ledger.amount(1, FinanceLine::tax), CENT);
        double year = 1.02 * 1.03;
        assertEquals(20 / year + 15 / (year * year), ledger.presentValue(FinanceLine.INTEREST), CENT, "what comes after the study is left out");
        assertEquals(-7 / (year * year), ledger.presentValue(FinanceLine::tax), CENT);
        assertEquals(-500 + 20 / year + 8 / (year * year), ledger.presentValue(), CENT);
    }

    @Test
    void debtServiceIsWhatIsPaidOnWhatWasBorrowed() {
        assertEquals(List.of(FinanceLine.FEES, FinanceLine.INTEREST, FinanceLine.PRINCIPAL, FinanceLine.LEASE_PAYMENTS, FinanceLine.SINKING_FUND),
                Arrays.stream(FinanceLine.values()).filter(FinanceLine::debtService).toList());
        assertTrue(FinanceLine.TAXES.cash() && FinanceLine.TAXES.tax());
        assertFalse(FinanceLine.DEBT_LEFT.cash() || FinanceLine.DEBT_LEFT.tax());
    }
}
