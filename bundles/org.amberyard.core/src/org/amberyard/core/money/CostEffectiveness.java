package org.amberyard.core.money;

import org.amberyard.core.math.Checks;
import org.amberyard.core.why.Derivation;

/**
 * Cost of a yearly reduction by capital recovery: a cost paid once is spread over a life at a rate and divided by what is
 * reduced in a year, as grant guidelines for cleaner vehicles have it (California Air Resources Board, Carl Moyer Program
 * Guidelines, appendix on cost-effectiveness; formula from memory).
 *
 * @param cost cost paid once
 * @param rate rate per year
 * @param years life of the reduction
 * @param reducedPerYear reduction per year, in the unit in which the answer is wanted
 */
public record CostEffectiveness(double cost, double rate, double years, double reducedPerYear) {
    /** The rule in words, to be printed beside its results. */
    public static final String FORMULA = "cost × capital recovery factor / yearly reduction, with the factor"
            + " rate / (1 - (1 + rate)^-years)";

    public CostEffectiveness {
        Checks.notNegative("Cost", cost);
        Checks.rate("Rate", rate);
        Checks.positive("Years", years);
        Checks.positive("Yearly reduction", reducedPerYear);
    }

    /** Capital recovery factor, 1/a. */
    public double recoveryFactor() {
        return DiscountFactor.capitalRecovery(rate, years);
    }

    /** The cost spread over the life, money/a. */
    public double annualCost() {
        return cost * recoveryFactor();
    }

    /** Cost per unit reduced. */
    public double costPerUnit() {
        return annualCost() / reducedPerYear;
    }

    /** Largest cost that keeps a limit on the cost per unit. */
    public double largestCost(double limitPerUnit) {
        return limitPerUnit * reducedPerYear / recoveryFactor();
    }

    /**
     * How the cost per unit comes about.
     *
     * @param what what is reduced, for instance {@code NOx}
     * @param unit unit of the reduction
     * @param costParts how the cost comes about
     * @param reduction how the yearly reduction comes about
     */
    public Derivation why(String what, String unit, Derivation costParts, Derivation reduction) {
        Derivation factor = Derivation.of("Capital recovery factor", recoveryFactor(), "1/a", "rate / (1 - (1 + rate)^-years)",
                Derivation.of("Rate", rate, "", "of the programme"), Derivation.of("Life", years, "a", "of the reduction"));
        return Derivation.of("Cost per " + unit + " of " + what, costPerUnit(), Derivation.MONEY, FORMULA, costParts, factor,
                reduction);
    }
}
