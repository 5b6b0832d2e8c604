package org.amberyard.report;

import static org.amberyard.report.WhatIfColumns.number;
import static org.amberyard.report.WhatIfColumns.percent;
import static org.amberyard.report.WhatIfColumns.share;
import static org.amberyard.report.WhatIfColumns.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.StudyStage;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.variants.AllTogether;
import org.amberyard.core.variants.OneAtATime;
import org.amberyard.core.variants.Scenarios;
import org.amberyard.core.variants.TwoTogether;
import org.amberyard.core.variants.VarianceShares;
import org.amberyard.core.variants.VariedInputs;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.Band;
import org.amberyard.core.whatif.BudgetRisk;
import org.amberyard.core.whatif.Grid;
import org.amberyard.core.whatif.SobolIndices;
import org.amberyard.core.whatif.SortedDraws;
import org.amberyard.core.whatif.Tornado;
import org.amberyard.report.ResultColumn.Type;
import org.amberyard.report.ResultRows.OfPlan;

/**
 * Tables of a what-if. Savings are the present cost of the baseline less that of a plan. Columns of inputs hold what is drawn: a
 * factor, an addition or a value in the unit in which the study stores it, or a word.
 */
public final class WhatIfTables {
    /** Name of the table of two inputs together. */
    public static final String GRID = "what_if_grid";
    private static final double CONFIDENCE = 0.95;
    private static final double KG_PER_TONNE = 1000;

    private final StudyResult base;
    private final VariedInputs whatIf;
    private final String money;

    private WhatIfTables(WhatIfResults results) {
        this.base = results.base();
        this.whatIf = results.inputs();
        this.money = base.input().currency();
    }

    /** The tables of all that a what-if has found; prices as they are drawn are in the units of the system. */
    public static List<ResultTable> of(WhatIfResults results, UnitSystem system) {
        WhatIfTables tables = new WhatIfTables(results);
        List<ResultTable> made = new ArrayList<>();
        oneAtATime(results).ifPresent(made::add);
        results.grid().map(tables::grid).ifPresent(made::add);
        results.scenarios().map(tables::scenarios).ifPresent(made::add);
        results.all().map(tables::summary).ifPresent(made::add);
        FitTable.of(results).ifPresent(made::add);
        results.all().map(tables::appropriations).ifPresent(made::add);
        made.addAll(DrawTables.of(results));
        DrawnInputTable.of(results).ifPresent(made::add);
        PriceFanTable.of(results, system).ifPresent(made::add);
        results.shares().map(tables::varianceShares).ifPresent(made::add);
        made.addAll(BreakEvenTables.of(results));
        return made;
    }

    /** The table of inputs one at a time by itself; empty while they are not worked out. */
    public static Optional<ResultTable> oneAtATime(WhatIfResults results) {
        return results.single().map(new WhatIfTables(results)::tornado);
    }

    /** Inputs one at a time: what a plan saves with each low and high, the widest first. */
    private ResultTable tornado(OneAtATime run) {
        List<List<Object>> rows = new ArrayList<>();
        for (int plan : others()) {
            Tornado tornado = run.saving(plan, base.input().baseline());
            for (Tornado.Bar bar : tornado.bars()) {
                rows.add(List.of(name(plan), whatIf.name(bar.input()), run.words(whatIf, bar.input(), true),
                        run.words(whatIf, bar.input(), false), bar.atLow(), tornado.base(), bar.atHigh(), bar.swing()));
            }
            rows.add(Arrays.asList(name(plan), "all together, beyond the sum of the single ones", "all low", "all high",
                    tornado.lowInteraction(), null, tornado.highInteraction(), null));
        }
        return new ResultTable("tornado", "What each uncertain input does by itself", List.of(text("plan", "Plan", "Name of the plan."),
                text("input", "Input", "Uncertain input, or group of inputs that are all low or "
                        + "all high together; the last row tells what is left when all are low or high together."),
                text("low", "Low", "What one in ten stays below; the first choice of a list."),
                text("high", "High", "What one in ten exceeds; the last choice of a list."),
                amount("saving_low", "Saving at low", "Present cost of the baseline less that of the plan."),
                amount("saving", "Saving of the study", "With all inputs as they are."),
                amount("saving_high", "Saving at high", "Likewise."), amount("swing", "Swing", "Difference of the two.")), rows);
    }

    /** What of the evaluation each input reaches. */
    public static ResultTable stages(List<String> inputs, List<Set<StudyStage>> stages) {
        List<List<Object>> rows = new ArrayList<>();
        for (int input = 0; input < stages.size(); input++) {
            List<Object> row = new ArrayList<>(List.of(inputs.get(input)));
            for (StudyStage stage : StudyStage.values()) {
                row.add(stages.get(input).contains(stage) ? "anew" : "kept");
            }
            rows.add(row);
        }
        return new ResultTable("stages_touched", "What each uncertain input has computed anew", List.of(
                text("input", "Input", "Uncertain input."), text("driving", "Driving", "Energy of the buses on their routes."),
                text("plan", "Plan", "The fleet over the years, packs and upkeep."),
                text("charging", "Charging", "Schedules and bills of the yard."), text("prices", "Prices", "Costs at their prices.")), rows);
    }

    /** Plans over all draws. */
    private ResultTable summary(AllTogether run) {
        List<List<Object>> rows = new ArrayList<>();
        int baseline = base.input().baseline();
        for (int plan = 0; plan < base.plans().size(); plan++) {
            SortedDraws cost = run.presentCost(plan);
            Band cheaper = plan == baseline ? null : run.plans().cheaper(plan, baseline).band(CONFIDENCE);
            rows.add(Arrays.asList(name(plan), run.end().draws(), whatIf.seed(), run.evaluatedWholly(), run.missed().presentCosts().get(plan).within(),
                    run.missed().savings().get(plan).within(), run.moments(plan).mean(), error(run, plan),
                    cost.quantile(0.1), cost.quantile(0.5), cost.quantile(0.9), percent(cheaper == null ? null : cheaper.value()),
                    percent(cheaper == null ? null : cheaper.low()), percent(cheaper == null ? null : cheaper.high()),
                    Arrays.stream(run.plans().regret(plan)).average().orElse(0)));
        }
        return new ResultTable("what_if_summary", "Plans over all draws", List.of(text("plan", "Plan", "Name of the plan."),
                new ResultColumn("draws", "Draws", "count", Type.INTEGER, "Number of draws that are done."),
                new ResultColumn("seed", "Seed", "", Type.INTEGER,
                        "Number that the draws begin with; the same study, seed and number of draws give the same figures."),
                new ResultColumn("evaluated_whole", "Of these as a whole", "count", Type.INTEGER,
                        "Draws in which more than prices differs or prices decide otherwise; the others are found from prices alone."),
                amount("fit_error", "Error of the fit", FitTable.MISSED + ". Means and percentiles rest on such draws."),
                amount("saving_fit_error", "Of the saving", "The same of the present cost of the baseline less that of the plan, on which "
                        + "the share of draws rests."),
                amount("mean", "Mean present cost", "Mean over the draws."),
                amount("standard_error", "Standard error",
                        "Of the mean, from independent samples of draws, widened because these are few; empty while there are too few."),
                amount("p10", "P10", "Present cost that one draw in ten stays below."),
                amount("p50", "P50", "Present cost that half the draws stay below."),
                amount("p90", "P90", "Present cost that one draw in ten exceeds."),
                share("cheaper", "Cheaper than the baseline", "Share of draws in which the plan costs less."),
                share("cheaper_low", "Likely from", "Lower end of its 95 % interval (Wilson)."),
                share("cheaper_high", "Likely to", "Upper end."),
                amount("regret", "Mean regret", "Mean of what it costs more than the cheapest plan of each draw.")), rows);
    }

    /** What must be appropriated, over all draws. */
    private ResultTable appropriations(AllTogether run) {
        List<List<Object>> rows = new ArrayList<>();
        for (int plan = 0; plan < base.plans().size(); plan++) {
            for (int year = 0; year < base.input().years(); year++) {
                SortedDraws cost = run.appropriation(plan, year);
                BudgetRisk risk = run.budgetRisk(plan, year, CONFIDENCE);
                rows.add(List.of(name(plan), base.input().baseYear() + year, cost.quantile(0.1), cost.quantile(0.5), cost.quantile(0.9),
                        run.missed().appropriations().get(plan).get(year).within(), risk.atRisk(), percent(risk.over().band(CONFIDENCE).value())));
            }
        }
        return new ResultTable("what_if_budget", "What must be appropriated over all draws", List.of(
                text("plan", "Plan", "Name of the plan."), new ResultColumn("year", "Year", "calendar year", Type.INTEGER, "Fiscal year."),
                amount("p10", "P10", "Appropriation that one draw in ten stays below, money of the time of payment."),
                amount("p50", "P50", "That half the draws stay below."), amount("p90", "P90", "That one draw in ten exceeds."),
                amount("fit_error", "Error of the fit", FitTable.MISSED + "."),
                amount("at_risk", "At risk", "What nineteen draws in twenty stay within above the plan's yearly cap, or above what the "
                        + "study appropriates where there is none; below zero when under it."),
                share("over", "Above it", "Share of draws above that cap or appropriation.")), rows);
    }

    /** What explains the variance of the savings. */
    private ResultTable varianceShares(VarianceShares run) {
        List<List<Object>> rows = new ArrayList<>();
        for (int plan : others()) {
            SobolIndices shares = run.ofSaving(plan);
            for (int group = 0; group < run.groups().size(); group++) {
                Band first = shares.first().get(group);
                Band total = shares.total().get(group);
                rows.add(List.of(name(plan), run.groups().get(group), percent(first.value()), percent(first.low()), percent(first.high()),
                        percent(total.value()), percent(total.low()), percent(total.high()), run.missed().savings().get(plan).within()));
            }
            List<Integer> deciding = VarianceShares.deciding(shares);
            if (!deciding.isEmpty()) {
                rows.add(Arrays.asList(name(plan), run.explained(shares), percent(VarianceShares.together(shares, deciding)), null, null,
                        null, null, null, run.missed().savings().get(plan).within()));
            }
        }
        return new ResultTable("variance_shares", "What explains the variance of the savings", List.of(
                text("plan", "Plan", "Name of the plan."), text("input", "Input", "Uncertain input; those of a group, and "
                        + "correlated ones, stand together. The last row adds up those that explain a twentieth or more by themselves."),
                share("first", "By itself", "Share of the variance that it explains by itself (Sobol index of the first order)."),
                share("first_low", "Likely from", "Lower end of its 95 % interval, " + run.intervals() + "."), share("first_high", "Likely to", "Upper end."),
                share("total", "With others", "Share that it explains by itself and together with others (total index)."),
                share("total_low", "With others, from", "Lower end of its interval."),
                share("total_high", "With others, to", "Upper end."),
                amount("fit_error", "Error of the fit", FitTable.MISSED + ". Intervals do not hold it.")), rows);
    }

    /** Savings over two inputs. */
    private ResultTable grid(TwoTogether run) {
        List<List<Object>> rows = new ArrayList<>();
        Grid grid = run.grid();
        for (int plan : others()) {
            double[] saving = run.saving(plan);
            for (int e = 0; e < grid.evaluations(); e++) {
                rows.add(List.of(name(plan), grid.first(e), grid.second(e), saving[e]));
            }
        }
        return new ResultTable(GRID, whatIf.names().get(run.first()) + " and " + whatIf.names().get(run.second()),
                List.of(text("plan", "Plan", "Name of the plan."), number("first", whatIf.names().get(run.first()), "First input."),
                        number("second", whatIf.names().get(run.second()), "Second input."),
                        amount("saving", "Saving", "Present cost of the baseline less that of the plan.")),
                rows);
    }

    /** Plans in the scenarios of the study. */
    private ResultTable scenarios(Scenarios run) {
        List<List<Object>> rows = new ArrayList<>();
        int baseline = base.input().baseline();
        for (int scenario = 0; scenario < run.names().size(); scenario++) {
            for (int plan = 0; plan < base.plans().size(); plan++) {
                double cost = run.presentCost(plan, scenario);
                rows.add(List.of(run.names().get(scenario), name(plan), cost, cost - base.plans().get(plan).measures().presentCost(),
                        run.presentCost(baseline, scenario) - cost, run.co2eKg(plan, scenario) / KG_PER_TONNE));
            }
        }
        return new ResultTable("scenarios", "Plans in named scenarios", List.of(text("scenario", "Scenario", "Name of the scenario."),
                text("plan", "Plan", "Name of the plan."), amount("present_cost", "Present cost", "Present value of all costs."),
                amount("change", "Change", "Against the study as it is."),
                amount("saving", "Saving", "Present cost of the baseline in the scenario less that of the plan."),
                new ResultColumn("co2e", "Greenhouse gas", "t CO2e", Type.NUMBER, "Over the study.")), rows);
    }

    private static Double error(AllTogether run, int plan) {
        return Double.isNaN(run.standardError(plan)) ? null : run.standardError(plan);
    }

    private String name(int plan) {
        return base.plans().get(plan).name();
    }

    private List<Integer> others() {
        return WhyTables.others(base).stream().map(OfPlan::index).toList();
    }

    private ResultColumn amount(String name, String label, String meaning) {
        return new ResultColumn(name, label, money, Type.MONEY, meaning);
    }
}
