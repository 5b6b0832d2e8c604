package org.amberyard.core.money;

import java.util.OptionalDouble;
import org.amberyard.core.math.Checks;
import org.amberyard.core.why.Derivation;

/**
 * What an alternative saves over a base case and what more it invests, both as present values, with the measures of Fuller and
 * Petersen, "Life-Cycle Costing Manual for the Federal Energy Management Program", NIST Handbook 135, 1995 edition, chapter 6
 * (from memory): energy, upkeep and fees are savings; purchases and replacements less grants and what is left at the end are
 * the investment.
 *
 * @param operatingSaving present value of running costs of the base case less those of the alternative
 * @param addedInvestment present value of investment of the alternative less that of the base case
 * @param rate discount rate per year, of the kind of money in which the measures are stated
 * @param years years studied
 */
public record LifeCycleSaving(double operatingSaving, double addedInvestment, double rate, int years) {
    /** An investment nearer to zero than this is none: less than a cent in the sums of a study. */
    private static final double TOLERANCE = 0.005;

    public LifeCycleSaving {
        Checks.finite("Operating saving", operatingSaving);
        Checks.finite("Added investment", addedInvestment);
        Checks.rate("Discount rate", rate);
        Checks.positive("Years", years);
    }

    /** Net saving: life-cycle cost of the base case less that of the alternative. */
    public double netSaving() {
        return operatingSaving - addedInvestment;
    }

    /** Level yearly amount, at the end of each year, with the present value of the net saving. */
    public double annualSaving() {
        return netSaving() * DiscountFactor.capitalRecovery(rate, years);
    }

    /** Savings-to-investment ratio; empty when the alternative invests no more than the base case. */
    public OptionalDouble savingsToInvestment() {
        return addedInvestment > TOLERANCE ? OptionalDouble.of(operatingSaving / addedInvestment) : OptionalDouble.empty();
    }

    /**
     * Adjusted internal rate of return per year: what the added investment earns when its savings are invested at the discount
     * rate until the end; empty when there is no added investment or no saving.
     */
    public OptionalDouble adjustedRate() {
        OptionalDouble ratio = savingsToInvestment();
        return ratio.isPresent() && ratio.getAsDouble() > 0
                ? OptionalDouble.of((1 + rate) * Math.pow(ratio.getAsDouble(), 1.0 / years) - 1) : OptionalDouble.empty();
    }

    /**
     * How the net saving comes about.
     *
     * @param operating how the operating saving comes about
     * @param investment how the added investment comes about
     */
    public Derivation whyNetSaving(Derivation operating, Derivation investment) {
        return Derivation.of("Net saving", netSaving(), Derivation.MONEY, "operating saving less added investment",
                operating, investment);
    }

    /**
     * How the annual saving comes about.
     *
     * @param net how the net saving comes about
     */
    public Derivation whyAnnualSaving(Derivation net) {
        return Derivation.product("Annual saving", Derivation.MONEY, net, DiscountFactor.whyCapitalRecovery(whyRate(), length()));
    }

    /**
     * How the savings-to-investment ratio comes about; not a number where there is none.
     *
     * @param operating how the operating saving comes about
     * @param investment how the added investment comes about
     */
    public Derivation whySavingsToInvestment(Derivation operating, Derivation investment) {
        return Derivation.of("Savings-to-investment ratio", savingsToInvestment().orElse(Double.NaN), "",
                "operating saving / added investment; none without an added investment", operating, investment);
    }

    /**
     * How the adjusted rate comes about; not a number where there is none.
     *
     * @param ratio how the savings-to-investment ratio comes about
     */
    public Derivation whyAdjustedRate(Derivation ratio) {
        return Derivation.of("Adjusted internal rate of return", adjustedRate().orElse(Double.NaN), "share",
                "(1 + rate) × ratio^(1 / years) - 1", whyRate(), ratio, length());
    }

    private Derivation whyRate() {
        return Derivation.of("Discount rate", rate, "share", "of the study");
    }

    private Derivation length() {
        return Derivation.of("Years", years, "a", "of the study");
    }
}
