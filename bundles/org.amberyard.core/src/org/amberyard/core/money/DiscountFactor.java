package org.amberyard.core.money;

import org.amberyard.core.math.Checks;
import org.amberyard.core.why.Derivation;

/**
 * Discount factors of life-cycle costing, end-of-period convention.
 *
 * <p>Names and formulas follow NIST Handbook 135 (Fuller and Petersen, 1995 edition): single present value (SPV), uniform
 * present value (UPV) and its modified form for prices that rise at a steady rate (UPV*).
 */
public final class DiscountFactor {
    private DiscountFactor() {
    }

    /** Present value of 1 paid at a time; {@code (1+d)^-t}. */
    public static double single(double rate, double years) {
        return Math.pow(1 + Checks.rate("Discount rate", rate), -years);
    }

    /** Present value of 1 paid at the end of each of a number of years; the number itself at a rate of zero. */
    public static double uniform(double rate, double years) {
        Checks.rate("Discount rate", rate);
        return rate == 0 ? years : -Math.expm1(-years * Math.log1p(rate)) / rate;
    }

    /** Present value of a yearly amount that is 1 at the base date and rises at a steady rate. */
    public static double uniformRising(double rate, double rise, int years) {
        double ratio = (1 + Checks.rate("Rise", rise)) / (1 + Checks.rate("Discount rate", rate));
        double sum = 0;
        for (int t = years; t >= 1; t--) {
            sum = ratio * (1 + sum);
        }
        return sum;
    }

    /** Yearly amount that repays 1 over a number of years: capital recovery factor, the inverse of {@link #uniform}. */
    public static double capitalRecovery(double rate, double years) {
        return 1 / uniform(rate, Checks.positive("Years", years));
    }

    /**
     * How a factor for 1 paid at a time comes about.
     *
     * @param rate discount rate per year
     * @param years time in years
     */
    public static Derivation whySingle(double rate, double years) {
        return Derivation.of("discount factor at " + years + " years", single(rate, years), "", "1 over 1 plus the discount rate, to the years");
    }

    /**
     * How a capital recovery factor comes about.
     *
     * @param rate discount rate per year
     * @param years number of years
     */
    public static Derivation whyCapitalRecovery(Derivation rate, Derivation years) {
        return Derivation.of("Capital recovery factor", capitalRecovery(rate.value(), years.value()), "1/a", "rate / (1 - (1 + rate)^-years)",
                rate, years);
    }
}
