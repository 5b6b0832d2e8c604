package org.amberyard.core.finance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.finance.DebtSchedule.Payment;
import org.amberyard.core.money.DiscountFactor;
import org.amberyard.core.why.Derivation;

/**
 * A lease-purchase: level payments, and what is leased is bought out at the end. Each payment holds interest on what is still
 * to be paid of the price, as in the table that municipal leases carry.
 *
 * @param yearlyRate nominal yearly rate
 * @param years years of the lease
 * @param paymentsPerYear 1, 2, 4 or 12
 * @param advance true when each payment falls at the start of its period instead of at its end
 * @param buyOutShare paid at the end over the price; zero where it goes over without a payment
 * @param feeShare fee over the price, paid at the start
 */
public record Lease(double yearlyRate, int years, int paymentsPerYear, boolean advance, double buyOutShare, double feeShare)
        implements Borrowing {

    public Lease {
        Terms.check(yearlyRate, years, paymentsPerYear);
        Terms.share("Buy-out share", buyOutShare);
        Terms.share("Fee share", feeShare);
    }

    /** Interest of a period. */
    public double periodRate() {
        return yearlyRate / paymentsPerYear;
    }

    /** The level payment for a price. */
    public double payment(double price) {
        int all = years * paymentsPerYear;
        double financed = price * (1 - buyOutShare * DiscountFactor.single(periodRate(), all));
        return financed * DiscountFactor.capitalRecovery(periodRate(), all) / (advance ? 1 + periodRate() : 1);
    }

    @Override
    public DebtSchedule schedule(double price) {
        List<Payment> payments = new ArrayList<>();
        int all = years * paymentsPerYear;
        double balance = price;
        for (int k = 1; k <= all; k++) {
            double interest = advance && k == 1 ? 0 : balance * periodRate();
            double principal = k == all && buyOutShare == 0 ? balance : payment(price) - interest;
            balance -= principal;
            double time = (double) (advance ? k - 1 : k) / paymentsPerYear;
            payments.add(new Payment((k - 1) / paymentsPerYear, time, interest, principal, 0, balance, 0));
        }
        if (buyOutShare > 0) {
            double interest = advance ? balance * periodRate() : 0;
            payments.add(new Payment(years - 1, years, interest, balance, 0, 0, 0));
        }
        return new DebtSchedule(price, price * feeShare, paymentsPerYear, periodRate(), 0, payments);
    }

    @Override
    public Optional<Derivation> whyPayment(Derivation price) {
        return Optional.of(Derivation.of("Lease payment", payment(price.value()), Derivation.MONEY,
                "(price - buy-out × (1 + rate of a period)^-payments) × rate of a period / (1 - (1 + rate of a period)^-payments)"
                        + (advance ? " / (1 + rate of a period)" : ""),
                price, Derivation.product("Buy-out", Derivation.MONEY, price,
                        Derivation.of("Buy-out over the price", buyOutShare, "", "of the offer")),
                Terms.whyPeriodRate(yearlyRate, paymentsPerYear),
                Derivation.of("Payments", years * paymentsPerYear, "", "years × payments per year")));
    }
}
