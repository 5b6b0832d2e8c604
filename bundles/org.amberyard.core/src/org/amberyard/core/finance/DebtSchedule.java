package org.amberyard.core.finance;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The payments on a debt. Years count from the day on which the money is drawn.
 *
 * @param proceeds sum drawn
 * @param fee cost of the issue, paid when the money is drawn
 * @param paymentsPerYear payments in a year
 * @param periodRate interest of a period
 * @param fundRate what a sinking fund earns in a period
 * @param payments payments in order
 */
public record DebtSchedule(double proceeds, double fee, int paymentsPerYear, double periodRate, double fundRate,
        List<Payment> payments) {

    /**
     * A payment.
     *
     * @param year year in which it falls, 0 for the first; a payment at the end of a year belongs to it
     * @param timeYears time after the money was drawn
     * @param interest interest since the payment before
     * @param principal principal repaid
     * @param deposit paid into the sinking fund; negative where the fund pays
     * @param balance principal owed after it
     * @param fund sinking fund after it
     */
    public record Payment(int year, double timeYears, double interest, double principal, double deposit, double balance,
            double fund) {
        /** Money that leaves the budget. */
        public double paid() {
            return interest + principal + deposit;
        }
    }

    public DebtSchedule {
        payments = List.copyOf(payments);
    }

    /** Interest paid in a year. */
    public double interest(int year) {
        return sum(year, Payment::interest);
    }

    /** Principal repaid in a year. */
    public double principal(int year) {
        return sum(year, Payment::principal);
    }

    /** Paid into the sinking fund in a year; negative where the fund pays. */
    public double deposits(int year) {
        return sum(year, Payment::deposit);
    }

    /** What the sinking fund earns in a year. */
    public double fundEarnings(int year) {
        double earned = 0;
        for (int k = 1; k < payments.size(); k++) {
            earned += payments.get(k).year() == year ? payments.get(k - 1).fund() * fundRate : 0;
        }
        return earned;
    }

    /** All interest. */
    public double interest() {
        return payments.stream().mapToDouble(Payment::interest).sum();
    }

    /** Years from the drawing to the last payment, the started one included. */
    public int years() {
        return payments.get(payments.size() - 1).year() + 1;
    }

    /** Principal owed and interest accrued at the end of a number of years, less the sinking fund then. */
    public double owedAfter(int years) {
        Payment last = new Payment(0, 0, 0, 0, 0, proceeds, 0);
        for (Payment payment : payments) {
            last = payment.year() < years ? payment : last;
        }
        double periods = (years - last.timeYears()) * paymentsPerYear;
        return last.balance() * Math.pow(1 + periodRate, periods) - last.fund() * Math.pow(1 + fundRate, periods);
    }

    private double sum(int year, ToDoubleFunction<Payment> part) {
        return payments.stream().filter(p -> p.year() == year).mapToDouble(part).sum();
    }
}
