package org.amberyard.core.money;

import org.amberyard.core.math.Checks;

/**
 * Real discount rate and general inflation; the nominal rate follows as {@code (1+n) = (1+r)(1+i)} (Fisher).
 *
 * <p>Constant money is money of the base date, the start of the base year.
 *
 * @param real real discount rate per year
 * @param inflation general inflation per year
 */
public record MoneyRates(double real, double inflation) {

    public MoneyRates {
        Checks.rate("Real discount rate", real);
        Checks.rate("General inflation", inflation);
    }

    /** From a discount rate that includes inflation. */
    public static MoneyRates ofNominal(double nominal, double inflation) {
        return new MoneyRates((1 + nominal) / (1 + inflation) - 1, inflation);
    }

    /** Nominal discount rate per year. */
    public double nominal() {
        return (1 + real) * (1 + inflation) - 1;
    }

    /** Money of a time over money of the base date. */
    public double inflationFactor(double years) {
        return Math.pow(1 + inflation, years);
    }

    /** Rise above general inflation of a rise that includes it. */
    public double realRise(double nominalRise) {
        return (1 + nominalRise) / (1 + inflation) - 1;
    }

    /** Discount rate that goes with amounts stated in a basis. */
    public double rateFor(MoneyBasis basis) {
        return basis == MoneyBasis.NOMINAL ? nominal() : real;
    }
}
