package org.amberyard.core.plan;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.amberyard.core.money.CashFlow;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostGroups;
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
        return new LifeCycleSaving(difference(false, baseline, plan), difference(true, plan, baseline), rules().rates().real(),
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

    private static double difference(boolean investment, PlanResult of, PlanResult less) {
        return categories(investment).mapToDouble(c -> of.ledger().presentValue(c) - less.ledger().presentValue(c)).sum();
    }

    private static Stream<CostCategory> categories(boolean investment) {
        return Arrays.stream(CostCategory.values()).filter(c -> CostGroups.investment(c) == investment);
    }

    /** How the measures come about, from the present values of the categories of both plans. */
    public SavingWhy why(BiFunction<PlanResult, CostCategory, Derivation> presentValue) {
        return new SavingWhy(this, difference("Operating saving", false, baseline, plan, presentValue),
                difference("Added investment", true, plan, baseline, presentValue));
    }

    private static Derivation difference(String name, boolean investment, PlanResult of, PlanResult less,
            BiFunction<PlanResult, CostCategory, Derivation> presentValue) {
        List<Derivation> parts = categories(investment)
                .filter(c -> of.ledger().presentValue(c) != 0 || less.ledger().presentValue(c) != 0)
                .map(c -> difference(c, of, less, presentValue.apply(of, c), presentValue.apply(less, c))).toList();
        return Derivation.sum(name, Derivation.MONEY, parts);
    }

    private static Derivation difference(CostCategory category, PlanResult of, PlanResult less, Derivation first,
            Derivation second) {
        return Derivation.of(category.label(), first.value() - second.value(), Derivation.MONEY,
                of.name() + " less " + less.name(), first, second);
    }

    MoneyRules rules() {
        return plan.ledger().rules();
    }
}
