package org.amberyard.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.amberyard.core.finance.FinanceLine;
import org.amberyard.core.money.DiscountFactor;
import org.amberyard.core.money.InternalRate;
import org.amberyard.core.plan.SavingMeasures;
import org.amberyard.core.plan.SavingWhy;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.Unit;
import org.amberyard.core.why.Derivation;
import org.amberyard.report.ResultRows.OfPlan;

/** The table of all measures of plans against the baseline, before and after financing. */
final class MeasureTable {
    private static final String RATE = " per year; above inflation where the study states constant money, else with it.";

    private MeasureTable() {
    }

    /** A plan, with its measures against the baseline where it is another plan. */
    record OfMeasures(OfPlan at, Optional<SavingMeasures> saving, Optional<InternalRate> internalRate) {
        static List<OfMeasures> all(StudyResult result) {
            return OfPlan.all(result).stream().map(OfMeasures::of).toList();
        }

        private static OfMeasures of(OfPlan at) {
            Optional<SavingMeasures> saving = at.comparison()
                    .map(c -> new SavingMeasures(at.plan(), at.result().baseline()));
            return new OfMeasures(at, saving, saving.map(SavingMeasures::internalRate));
        }

        OptionalDouble of(Function<SavingMeasures, OptionalDouble> measure) {
            return saving.map(measure).orElse(OptionalDouble.empty());
        }

        OptionalDouble onlyRate() {
            return internalRate.filter(r -> r.kind() == InternalRate.Kind.ONE).map(r -> OptionalDouble.of(r.rates().get(0)))
                    .orElse(OptionalDouble.empty());
        }

        /** Goes down to the cells of the ledgers and their inputs. */
        Derivation why(Function<SavingWhy, Derivation> measure) {
            return saving.map(s -> measure.apply(s.why((plan, c) -> new LedgerWhy(at.result(), plan).presentCost(c))))
                    .orElseGet(() -> HeadlineWhy.notCompared(at));
        }

        double perYear(double present) {
            StudyInput study = at.result().input();
            return present * DiscountFactor.capitalRecovery(study.money().rates().real(), study.years());
        }
    }

    static TableDefinition<OfMeasures> measures() {
        TableDefinition<OfMeasures> table = new TableDefinition<>("measures", "Measures against the baseline", OfMeasures::all)
                .text("plan", "Plan", "Name of the plan; the baseline has no measures against itself.",
                        r -> r.at().plan().name())
                .heads();
        costs(table);
        savings(table);
        rates(table);
        return PaybackColumns.added(table, r -> r.at().comparison());
    }

    private static void costs(TableDefinition<OfMeasures> table) {
        table.money("present_cost", "Present cost",
                "Present value of all costs with every purchase paid in cash, before income tax.",
                r -> r.at().plan().measures().presentCost())
                .why(r -> new LedgerWhy(r.at().result(), r.at().plan()).presentCost())
                .money("financing", "Present cost of financing", "Present value of what is borrowed, negative, and of all that is "
                        + "paid on it; zero at a rate equal to the discount rate.",
                        r -> r.at().plan().finance().ledger().presentValue(line -> !line.tax()))
                .money("taxes", "Present cost of taxes", "Present value of income tax.",
                        r -> r.at().plan().finance().ledger().presentValue(FinanceLine::tax))
                .money("financed_cost", "Present cost after financing and taxes", "The three together.",
                        r -> r.at().plan().presentCostAfterFinancing());
    }

    private static void savings(TableDefinition<OfMeasures> table) {
        table.optionalMoney("net_saving", "Net saving", "Present cost of the baseline less that of the plan, paid in cash.",
                r -> r.of(s -> OptionalDouble.of(s.lifeCycle().netSaving())))
                .why(r -> r.why(SavingWhy::netSaving))
                .optionalMoney("annual_saving", "Annual saving",
                        "Level yearly saving in constant money with the same present value.",
                        r -> r.of(s -> OptionalDouble.of(s.lifeCycle().annualSaving())))
                .why(r -> r.why(SavingWhy::annualSaving))
                .optionalMoney("operating_saving", "Operating saving",
                        "Present value of energy, upkeep, fees, credits and yearly aid: baseline less plan.",
                        r -> r.of(s -> OptionalDouble.of(s.lifeCycle().operatingSaving())))
                .why(r -> r.why(SavingWhy::operatingSaving))
                .optionalMoney("added_investment", "Added investment",
                        "Present value of purchases less awards, sales and what is left: plan less baseline.",
                        r -> r.of(s -> OptionalDouble.of(s.lifeCycle().addedInvestment())))
                .why(r -> r.why(SavingWhy::addedInvestment))
                .optionalMoney("financed_saving", "Net saving after financing and taxes",
                        "Present cost after financing and taxes of the baseline less that of the plan.",
                        r -> r.of(s -> OptionalDouble.of(s.savingAfterFinancing())))
                .optionalMoney("financed_annual_saving", "Annual saving after financing and taxes",
                        "Level yearly saving in constant money with the same present value.",
                        r -> r.of(s -> OptionalDouble.of(r.perYear(s.savingAfterFinancing()))));
    }

    private static void rates(TableDefinition<OfMeasures> table) {
        table.optional("savings_to_investment", "Savings-to-investment ratio", ColumnUnit.TIMES, "Operating saving over added "
                + "investment, above 1 where the plan pays; no figure where the plan invests no more than the baseline.",
                r -> r.of(s -> s.lifeCycle().savingsToInvestment()))
                .why(r -> r.why(SavingWhy::savingsToInvestment))
                .optional("adjusted_rate", "Adjusted rate of return", Unit.SHARE,
                        "What the added investment earns when savings are invested at the discount rate," + RATE,
                        r -> r.of(SavingMeasures::adjustedRate))
                .why(r -> r.why(SavingWhy::adjustedRate))
                .text("internal_rate", "Internal rate of return", "All rates at which the saving of all costs is worth nothing,"
                        + RATE, r -> r.internalRate().map(InternalRate::words).orElse(null))
                .optional("internal_rate_only", "The only internal rate", Unit.SHARE,
                        "The internal rate of return where there is just one.", OfMeasures::onlyRate)
                .optional("modified_rate", "Modified rate of return", Unit.SHARE,
                        "With money owed and earned at the discount rate," + RATE, r -> r.of(SavingMeasures::modifiedRate));
    }
}
