package org.amberyard.core.finance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.finance.DebtSchedule.Payment;
import org.amberyard.core.money.DiscountFactor;
import org.amberyard.core.why.Derivation;

/**
 * A loan and how it is repaid. The last payment repays the balance, so that the schedule ends at zero exactly.
 *
 * @param repayment how the principal is repaid
 * @param yearlyRate nominal yearly rate
 * @param years years of repayment
 * @param paymentsPerYear 1, 2, 4 or 12
 * @param advance true when each payment falls at the start of its period instead of at its end; the first then bears no interest
 * @param gracePayments payments at the start that are interest only
 * @param feeShare fee over the sum drawn, paid when it is drawn
 */
public record Amortisation(Repayment repayment, double yearlyRate, int years, int paymentsPerYear, boolean advance,
        int gracePayments, double feeShare) implements Borrowing {

    public Amortisation {
        Terms.check(yearlyRate, years, paymentsPerYear);
        Terms.share("Fee share", feeShare);
        Terms.require(gracePayments >= 0 && gracePayments < years * paymentsPerYear,
                "Interest-only payments are " + gracePayments + " but must be fewer than all " + years * paymentsPerYear);
    }

    /** A loan with payments at the end of each period, without grace or fee. */
    public static Amortisation of(Repayment repayment, double yearlyRate, int years, int paymentsPerYear) {
        return new Amortisation(repayment, yearlyRate, years, paymentsPerYear, false, 0, 0);
    }

    /** Interest of a period. */
    public double periodRate() {
        return yearlyRate / paymentsPerYear;
    }

    /** The level payment on a sum, once the grace is over. */
    public double levelPayment(double amount) {
        double due = advance && gracePayments == 0 ? 1 + periodRate() : 1;
        return amount * DiscountFactor.capitalRecovery(periodRate(), repaying()) / due;
    }

    @Override
    public DebtSchedule schedule(double amount) {
        List<Payment> payments = new ArrayList<>();
        int all = years * paymentsPerYear;
        double balance = amount;
        for (int k = 1; k <= all; k++) {
            double interest = advance && k == 1 ? 0 : balance * periodRate();
            double principal = k == all ? balance : k <= gracePayments ? 0 : principal(amount, interest);
            balance -= principal;
            double time = (double) (advance ? k - 1 : k) / paymentsPerYear;
            payments.add(new Payment((k - 1) / paymentsPerYear, time, interest, principal, 0, balance, 0));
        }
        return new DebtSchedule(amount, amount * feeShare, paymentsPerYear, periodRate(), 0, payments);
    }

    private int repaying() {
        return years * paymentsPerYear - gracePayments;
    }

    private double principal(double amount, double interest) {
        return switch (repayment) {
            case LEVEL -> levelPayment(amount) - interest;
            case EQUAL_PRINCIPAL -> amount / repaying();
            case AT_END -> 0;
        };
    }

    @Override
    public Optional<Derivation> whyPayment(Derivation amount) {
        if (repayment != Repayment.LEVEL) {
            return Optional.empty();
        }
        return Optional.of(Derivation.of("Level payment", levelPayment(amount.value()), Derivation.MONEY,
                "sum × rate of a period / (1 - (1 + rate of a period)^-payments)"
                        + (advance && gracePayments == 0 ? " / (1 + rate of a period)" : ""),
                amount, Terms.whyPeriodRate(yearlyRate, paymentsPerYear),
                Derivation.of("Payments", repaying(), "", "years × payments per year less interest-only payments")));
    }
}
