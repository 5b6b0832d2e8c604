package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.amberyard.core.money.CashFlow;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostGroups;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.money.InternalRate;
import org.amberyard.core.money.LifeCycleSaving;
import org.amberyard.core.money.ModifiedRate;
import org.amberyard.core.money.MoneyBasis;
import org.amberyard.core.money.MoneyRules;
import org.amberyard.core.why.Derivation;

/**
 * Measures of a plan against the baseline. Purchases less awards, sales and what is left at the end are investment; energy,
 * upkeep, fees, credits and yearly aid are running costs. Rates are above inflation where the study states constant money, else
 * they include it.
 *
 * @param plan the plan
 * @param baseline what it is compared with
 */
public record SavingMeasures(PlanResult plan, PlanResult baseline) {
    private static final int HALF_YEARS = 2;

    /** Saving and investment as present values, with the real rate: its amounts are in constant money. */
    public LifeCycleSaving lifeCycle() {
        return new LifeCycleSaving(whyOperatingSaving().value(), whyAddedInvestment().value(), rules().rates().real(),
                plan.ledger().years());
    }

    /** Adjusted internal rate of return per year. */
    public OptionalDouble adjustedRate() {
        OptionalDouble real = lifeCycle().adjustedRate();
        boolean constant = rules().basis() == MoneyBasis.CONSTANT || real.isEmpty();
        return constant ? real : OptionalDouble.of((1 + real.getAsDouble()) * (1 + rules().rates().inflation()) - 1);
    }

    /** Internal rates of return of the difference of all costs, what is left at the end included. */
    public InternalRate internalRate() {
        return InternalRate.of(saving());
    }

    /** Modified internal rate of return, with money owed and earned at the discount rate. */
    public OptionalDouble modifiedRate() {
        double rate = rules().rates().rateFor(rules().basis());
        return ModifiedRate.of(saving(), rate, rate);
    }

    /** Present cost of the baseline less that of the plan, each after financing and taxes. */
    public double savingAfterFinancing() {
        return baseline.presentCostAfterFinancing() - plan.presentCostAfterFinancing();
    }

    /** Costs of the baseline less those of the plan, in the money that the study states, at the times at which they fall. */
    public CashFlow saving() {
        int steps = rules().midYear() ? HALF_YEARS : 1;
        double[] amounts = new double[plan.ledger().years() * steps + 1];
        for (int year = 0; year < plan.ledger().years(); year++) {
            for (CostCategory category : CostCategory.values()) {
                int step = (int) Math.round(rules().time(category, year) * steps);
                amounts[step] += baseline.ledger().amount(year, category) - plan.ledger().amount(year, category);
            }
        }
        return new CashFlow(steps, Arrays.stream(amounts).boxed().toList());
    }

    /** How the net saving comes about, down to the present values of the categories. */
    public Derivation whyNetSaving() {
        return lifeCycle().whyNetSaving(whyOperatingSaving(), whyAddedInvestment());
    }

    /** How the annual saving comes about. */
    public Derivation whyAnnualSaving() {
        return lifeCycle().whyAnnualSaving(whyNetSaving());
    }

    /** How the savings-to-investment ratio comes about. */
    public Derivation whySavingsToInvestment() {
        return lifeCycle().whySavingsToInvestment(whyOperatingSaving(), whyAddedInvestment());
    }

    /** How the adjusted rate comes about; with inflation where the study states nominal money. */
    public Derivation whyAdjustedRate() {
        Derivation real = lifeCycle().whyAdjustedRate(whySavingsToInvestment());
        return rules().basis() == MoneyBasis.CONSTANT ? real
                : Derivation.of(real.name(), adjustedRate().orElse(Double.NaN), "", "(1 + real rate) × (1 + inflation) - 1", real,
                        Derivation.of("General inflation", rules().rates().inflation(), "", "of the study"));
    }

    /** How the operating saving comes about, by category. */
    public Derivation whyOperatingSaving() {
        return Derivation.sum("Operating saving", Derivation.MONEY, differences(false, baseline, plan));
    }

    /** How the added investment comes about, by category. */
    public Derivation whyAddedInvestment() {
        return Derivation.sum("Added investment", Derivation.MONEY, differences(true, plan, baseline));
    }

    private static List<Derivation> differences(boolean investment, PlanResult of, PlanResult less) {
        List<Derivation> parts = new ArrayList<>();
        for (CostCategory category : CostCategory.values()) {
            if (CostGroups.investment(category) == investment) {
                Derivation first = presentValue(of, category);
                Derivation second = presentValue(less, category);
                parts.add(Derivation.of(category.label(), first.value() - second.value(), Derivation.MONEY,
                        of.name() + " less " + less.name(), first, second));
            }
        }
        return parts;
    }

    private static Derivation presentValue(PlanResult plan, CostCategory category) {
        CostLedger ledger = plan.ledger();
        return Derivation.of(category.label() + ", " + plan.name(), ledger.presentValue(category), Derivation.MONEY,
                "present value over the years of the study");
    }

    private MoneyRules rules() {
        return plan.ledger().rules();
    }
}
