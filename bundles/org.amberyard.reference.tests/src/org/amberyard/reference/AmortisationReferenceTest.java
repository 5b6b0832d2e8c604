package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.amberyard.core.finance.Amortisation;
import org.amberyard.core.finance.Bond;
import org.amberyard.core.finance.DebtSchedule;
import org.amberyard.core.finance.DebtSchedule.Payment;
import org.amberyard.core.finance.Repayment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Schedules of loans against tables that others have worked out. */
class AmortisationReferenceTest {
    private static final double CENT = 0.01;

    private static void row(Payment payment, double interest, double principal, double balance, double tolerance) {
        assertEquals(interest, payment.interest(), tolerance);
        assertEquals(principal, payment.principal(), tolerance);
        assertEquals(balance, payment.balance(), tolerance);
    }

    /** 30,000 at 6 % in three yearly payments: table of an accounting exercise, read on justaaa.com, question 88418. */
    @Test
    void threeYearlyPayments() {
        List<Payment> payments = Amortisation.of(Repayment.LEVEL, 0.06, 3, 1).schedule(30_000).payments();
        assertEquals(11_223.29, payments.get(0).paid(), CENT);
        row(payments.get(0), 1_800.00, 9_423.29, 20_576.71, CENT);
        row(payments.get(1), 1_234.60, 9_988.69, 10_588.01, 2 * CENT);
        row(payments.get(2), 635.28, 10_588.01, 0, 2 * CENT);
    }

    /**
     * 150,000 at 3.625 % over 360 months: schedule of a university exercise on the theory of interest (Math 352), read in a copy;
     * it rounds each row to cents, so that later rows differ by some of them.
     */
    @Test
    void threeHundredAndSixtyMonths() {
        Amortisation loan = Amortisation.of(Repayment.LEVEL, 0.03625, 30, 12);
        assertEquals(684.08, loan.levelPayment(150_000), CENT / 2);
        List<Payment> payments = loan.schedule(150_000).payments();
        row(payments.get(0), 453.13, 230.95, 149_769.05, CENT);
        row(payments.get(4), 450.32, 233.76, 148_838.24, 2 * CENT);
        row(payments.get(9), 446.77, 237.31, 147_658.83, 5 * CENT);
    }

    /** 400,000 at 4 % in ten yearly payments, computed independently by the formula of the textbooks. */
    @Test
    void tenYearlyPayments() {
        DebtSchedule schedule = Amortisation.of(Repayment.LEVEL, 0.04, 10, 1).schedule(400_000);
        assertEquals(49_316.37773, schedule.payments().get(0).paid(), 1e-5);
        assertEquals(93_163.78, schedule.interest(), CENT);
        assertEquals(366_683.62, schedule.owedAfter(1), CENT);
        assertEquals(332_034.59, schedule.owedAfter(2), CENT);
        assertEquals(295_999.60, schedule.owedAfter(3), CENT);
    }

    /** 400,000 at 4 % in 120 monthly payments, computed independently. */
    @Test
    void monthlyPayments() {
        DebtSchedule schedule = Amortisation.of(Repayment.LEVEL, 0.04, 10, 12).schedule(400_000);
        assertEquals(4_049.805527, schedule.payments().get(0).paid(), 1e-6);
        assertEquals(219_900.6693, schedule.owedAfter(5), 1e-4);
    }

    /**
     * Sinking fund factors A/F of compound interest tables (Newnan, Eschenbach and Lavelle, "Engineering Economic Analysis",
     * appendix; from memory): 2 % over 10 periods 0.0913, 3 % over 20 periods 0.0372. A bond's periods are half-years.
     */
    @ParameterizedTest
    @CsvSource({"0.04,5,0.0913", "0.06,10,0.0372"})
    void sinkingFundFactors(double yearlyRate, int years, double expected) {
        assertEquals(expected, new Bond(Repayment.AT_END, 0.05, years, 0, OptionalDouble.of(yearlyRate)).deposit(1), 5e-5);
    }
}
