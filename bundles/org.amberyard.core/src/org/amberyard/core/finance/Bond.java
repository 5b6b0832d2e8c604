package org.amberyard.core.finance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.amberyard.core.finance.DebtSchedule.Payment;
import org.amberyard.core.money.DiscountFactor;
import org.amberyard.core.why.Derivation;

/**
 * A bond sold at par with half-yearly coupons. Serial bonds mature year by year, in equal parts or so that a year's debt service
 * is level; a term bond matures at the end, out of a sinking fund if one is kept. A sinking fund takes a level deposit with
 * each coupon, earns a rate and holds the face at maturity.
 *
 * @param form {@link Repayment#EQUAL_PRINCIPAL} or {@link Repayment#LEVEL} for serial bonds, {@link Repayment#AT_END} for a term
 *            bond
 * @param couponRate yearly coupon over the face
 * @param years years to the last maturity
 * @param issueCostShare cost of the issue over the face, paid when it is sold
 * @param sinkingFundRate nominal yearly rate that a sinking fund earns; empty without one
 */
public record Bond(Repayment form, double couponRate, int years, double issueCostShare, OptionalDouble sinkingFundRate)
        implements Borrowing {
    private static final int COUPONS_PER_YEAR = 2;

    public Bond {
        Terms.check(couponRate, years, COUPONS_PER_YEAR);
        Terms.share("Issue cost share", issueCostShare);
        sinkingFundRate.ifPresent(rate -> Terms.check(rate, years, COUPONS_PER_YEAR));
        Terms.require(sinkingFundRate.isEmpty() || form == Repayment.AT_END, "Only a term bond has a sinking fund");
    }

    /** The level deposit into the sinking fund; zero without one. */
    public double deposit(double face) {
        int coupons = years * COUPONS_PER_YEAR;
        return sinkingFundRate.isEmpty() ? 0 : face * DiscountFactor.single(fundRate(), coupons)
                * DiscountFactor.capitalRecovery(fundRate(), coupons);
    }

    @Override
    public DebtSchedule schedule(double face) {
        List<Payment> maturities = Amortisation.of(form, couponRate, years, 1).schedule(face).payments();
        List<Payment> payments = new ArrayList<>();
        double balance = face;
        double fund = 0;
        for (int k = 1; k <= years * COUPONS_PER_YEAR; k++) {
            int year = (k - 1) / COUPONS_PER_YEAR;
            double interest = balance * couponRate / COUPONS_PER_YEAR;
            double principal = k % COUPONS_PER_YEAR == 0 ? maturities.get(year).principal() : 0;
            boolean matured = k == years * COUPONS_PER_YEAR && sinkingFundRate.isPresent();
            double deposit = deposit(face) - (matured ? face : 0);
            balance = k == years * COUPONS_PER_YEAR ? 0 : balance - principal;
            fund = matured ? 0 : fund * (1 + fundRate()) + deposit;
            payments.add(new Payment(year, (double) k / COUPONS_PER_YEAR, interest, principal, deposit, balance, fund));
        }
        return new DebtSchedule(face, face * issueCostShare, COUPONS_PER_YEAR, couponRate / COUPONS_PER_YEAR, fundRate(),
                payments);
    }

    @Override
    public Optional<Derivation> whyPayment(Derivation face) {
        return Optional.empty();
    }

    private double fundRate() {
        return sinkingFundRate.orElse(0) / COUPONS_PER_YEAR;
    }
}
