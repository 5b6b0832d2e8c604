package org.amberyard.core.plan;

import org.amberyard.core.money.MoneyBasis;
import org.amberyard.core.why.Derivation;

/**
 * How the measures of a plan against the baseline come about.
 *
 * @param measures the measures
 * @param operatingSaving how the operating saving comes about
 * @param addedInvestment how the added investment comes about
 */
public record SavingWhy(SavingMeasures measures, Derivation operatingSaving, Derivation addedInvestment) {

    /** How the net saving comes about. */
    public Derivation netSaving() {
        return measures.lifeCycle().whyNetSaving(operatingSaving, addedInvestment);
    }

    /** How the annual saving comes about. */
    public Derivation annualSaving() {
        return measures.lifeCycle().whyAnnualSaving(netSaving());
    }

    /** How the savings-to-investment ratio comes about. */
    public Derivation savingsToInvestment() {
        return measures.lifeCycle().whySavingsToInvestment(operatingSaving, addedInvestment);
    }

    /** How the adjusted rate comes about; with inflation where the study states nominal money. */
    public Derivation adjustedRate() {
        Derivation real = measures.lifeCycle().whyAdjustedRate(savingsToInvestment());
        return measures.rules().basis() == MoneyBasis.CONSTANT ? real
                : Derivation.of(real.name(), measures.adjustedRate().orElse(Double.NaN), "share",
                        "(1 + real rate) × (1 + inflation) - 1", real,
                        Derivation.of("General inflation", measures.rules().rates().inflation(), "share", "of the study"));
    }
}
