package org.amberyard.core.finance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.amberyard.core.finance.DebtSchedule.Payment;
import org.amberyard.core.why.Derivation;
import org.junit.jupiter.api.Test;

/** Small schedules worked out by hand. */
class BorrowingByHandTest {
    private static final double CENT = 1e-9;

    private static List<Double> paid(DebtSchedule schedule) {
        return schedule.payments().stream().map(Payment::paid).toList();
    }

    private static void near(List<Double> expected, List<Double> found) {
        assertEquals(expected.size(), found.size());
        for (int i = 0; i < expected.size(); i++) {
            assertEquals(expected.get(i), found.get(i), CENT);
        }
    }

    /** 1,000 at 10 % in two payments of 1,000 × 0.1 × 1.21 / 0.21. */
    @Test
    void levelPayments() {
        double payment = 121 / 0.21;
        DebtSchedule schedule = Amortisation.of(Repayment.LEVEL, 0.1, 2, 1).schedule(1000);
        near(List.of(payment, payment), paid(schedule));
        assertEquals(100, schedule.interest(0), CENT);
        assertEquals((1100 - payment) * 0.1, schedule.interest(1), CENT);
        assertEquals(1100 - payment, schedule.owedAfter(1), CENT);
    }

    @Test
    void equalPrincipal() {
        near(List.of(600.0, 550.0), paid(Amortisation.of(Repayment.EQUAL_PRINCIPAL, 0.1, 2, 1).schedule(1000)));
    }

    @Test
    void interestOnlyAndTheSumAtTheEnd() {
        near(List.of(50.0, 50.0, 50.0, 1050.0), paid(Amortisation.of(Repayment.AT_END, 0.1, 2, 2).schedule(1000)));
    }

    /** Two payments at the start of the years: the first is all principal. */
    @Test
    void levelPaymentsInAdvance() {
        double payment = 110 / 0.21;
        DebtSchedule schedule = new Amortisation(Repayment.LEVEL, 0.1, 2, 1, true, 0, 0).schedule(1000);
        near(List.of(payment, payment), paid(schedule));
        assertEquals(0, schedule.interest(0), 0);
        assertEquals((1000 - payment) * 1.1, schedule.owedAfter(1), CENT);
        assertEquals(0, schedule.payments().get(0).timeYears(), 0);
    }

    @Test
    void graceIsInterestOnly() {
        double payment = 121 / 0.21;
        Amortisation loan = new Amortisation(Repayment.LEVEL, 0.1, 3, 1, false, 1, 0.02);
        near(List.of(100.0, payment, payment), paid(loan.schedule(1000)));
        assertEquals(20, loan.schedule(1000).fee(), 0);
    }

    @Test
    void withoutInterestPaymentsAreEqualParts() {
        near(List.of(250.0, 250.0, 250.0, 250.0), paid(Amortisation.of(Repayment.LEVEL, 0, 1, 4).schedule(1000)));
    }

    /** 1,000 leased for two years at 10 % with a buy-out of 210: (1,000 - 210 / 1.21) × 0.1 × 1.21 / 0.21. */
    @Test
    void leaseWithABuyOut() {
        double payment = (1000 - 210 / 1.21) * 0.121 / 0.21;
        near(List.of(payment, payment, 210.0), paid(new Lease(0.1, 2, 1, false, 0.21, 0).schedule(1000)));
        DebtSchedule advance = new Lease(0.1, 2, 1, true, 0.21, 0).schedule(1000);
        near(List.of(payment / 1.1, payment / 1.1, 210.0), paid(advance));
        assertEquals(List.of(0.0, 1.0, 2.0), advance.payments().stream().map(Payment::timeYears).toList());
        assertEquals(List.of(0, 1, 1), advance.payments().stream().map(Payment::year).toList());
    }

    /** Half-yearly coupons of 2 % on 1,000, then on 500. */
    @Test
    void serialBond() {
        Bond bond = new Bond(Repayment.EQUAL_PRINCIPAL, 0.04, 2, 0.015, OptionalDouble.empty());
        near(List.of(20.0, 520.0, 10.0, 510.0), paid(bond.schedule(1000)));
        assertEquals(15, bond.schedule(1000).fee(), 0);
    }

    @Test
    void serialBondWithLevelDebtService() {
        DebtSchedule schedule = new Bond(Repayment.LEVEL, 0.04, 5, 0, OptionalDouble.empty()).schedule(1000);
        double first = schedule.interest(0) + schedule.principal(0);
        for (int year = 1; year < 5; year++) {
            assertEquals(first, schedule.interest(year) + schedule.principal(year), CENT);
        }
    }

    /** One year, two deposits at 4 % a year: 1,000 / 2.02 each. */
    @Test
    void termBondWithASinkingFund() {
        DebtSchedule schedule = new Bond(Repayment.AT_END, 0.06, 1, 0, OptionalDouble.of(0.04)).schedule(1000);
        near(List.of(30 + 1000 / 2.02, 30 + 1000 / 2.02), paid(schedule));
        assertEquals(1000 / 2.02, schedule.payments().get(0).fund(), CENT);
        assertEquals(2000 / 2.02 - 1000, schedule.deposits(0), CENT);
        DebtSchedule longer = new Bond(Repayment.AT_END, 0.06, 2, 0, OptionalDouble.of(0.04)).schedule(1000);
        double fund = longer.payments().get(1).fund();
        assertEquals(1000 - fund, longer.owedAfter(1), CENT);
    }

    @Test
    void badTermsAreRefusedWithTheValue() {
        assertTrue(message(() -> Amortisation.of(Repayment.LEVEL, 0.1, 2, 3)).contains("are 3 but must be 1, 2, 4 or 12"));
        assertTrue(message(() -> new Amortisation(Repayment.LEVEL, 0.1, 2, 1, false, 2, 0)).contains("2"));
        assertTrue(message(() -> new Lease(-0.1, 2, 1, false, 0, 0)).contains("Yearly rate is -0.1"));
        assertTrue(message(() -> new Lease(0.1, 2, 1, false, 1.5, 0)).contains("Buy-out share is 1.5"));
        assertTrue(message(() -> new Bond(Repayment.LEVEL, 0.1, 2, 0, OptionalDouble.of(0.02))).contains("term bond"));
    }

    private static String message(Runnable terms) {
        return assertThrows(IllegalArgumentException.class, terms::run).getMessage();
    }

    @Test
    void paymentsThatStayTheSameSayHowTheyComeAbout() {
        Derivation sum = Derivation.of("Sum", 100_000, Derivation.MONEY, "of the purchases");
        Amortisation loan = Amortisation.of(Repayment.LEVEL, 0.06, 30, 12);
        Derivation why = loan.whyPayment(sum).orElseThrow();
        assertEquals(loan.schedule(100_000).payments().get(5).paid(), why.value(), 1e-6);
        assertEquals(0.005, why.parts().get(1).value(), 1e-15);
        assertEquals(360, why.parts().get(2).value(), 0);
        Lease lease = new Lease(0.06, 5, 4, true, 0.2, 0);
        Derivation paid = lease.whyPayment(sum).orElseThrow();
        assertEquals(lease.schedule(100_000).payments().get(3).paid(), paid.value(), 1e-6);
        assertEquals(20_000, paid.parts().get(1).value(), 1e-9);
        assertEquals(Optional.empty(), Amortisation.of(Repayment.AT_END, 0.06, 30, 12).whyPayment(sum));
        assertEquals(Optional.empty(), new Bond(Repayment.LEVEL, 0.04, 5, 0, OptionalDouble.empty()).whyPayment(sum));
    }
}
