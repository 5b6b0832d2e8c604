package org.amberyard.report;

import static org.amberyard.report.WhatIfColumns.count;
import static org.amberyard.report.WhatIfColumns.percent;
import static org.amberyard.report.WhatIfColumns.plan;
import static org.amberyard.report.WhatIfColumns.share;
import static org.amberyard.report.WhatIfColumns.year;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.variants.AllTogether;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.Band;
import org.amberyard.core.whatif.Histogram;
import org.amberyard.core.whatif.SortedDraws;
import org.amberyard.report.ResultColumn.Type;

/** Tables of all draws: what is spent by when, and what is regretted of each plan. */
final class DrawTables {
    private static final double CONFIDENCE = 0.95;
    private static final int BARS = 20;
    private static final int[] FAN = {5, 25, 50, 75, 95};
    private static final int[] REGRETS = {50, 75, 90, 95};

    private final StudyResult base;
    private final AllTogether run;

    private DrawTables(StudyResult base, AllTogether run) {
        this.base = base;
        this.run = run;
    }

    /** The tables of what has been found. */
    static List<ResultTable> of(WhatIfResults results) {
        return results.all().map(all -> new DrawTables(results.base(), all)).map(t -> List.of(t.spent(), t.regret(), t.regretBars()))
                .orElse(List.of());
    }

    /** What has been appropriated up to each year. */
    private ResultTable spent() {
        List<List<Object>> rows = new ArrayList<>();
        int baseline = base.input().baseline();
        for (int plan = 0; plan < base.plans().size(); plan++) {
            for (int year = 0; year < base.input().years(); year++) {
                List<Object> row = new ArrayList<>(List.of(name(plan), base.input().baseYear() + year));
                addPercentiles(row, run.spent(plan, year), FAN);
                row.add(run.missed().spent().get(plan).get(year).within());
                if (plan == baseline) {
                    row.addAll(Arrays.asList(new Object[FAN.length + 1]));
                } else {
                    addPercentiles(row, run.spentMore(plan, baseline, year), FAN);
                    row.add(run.missed().spentMore().get(plan).get(year).within());
                }
                rows.add(row);
            }
        }
        List<ResultColumn> columns = new ArrayList<>(List.of(plan(), year()));
        addPercentiles(columns, "p", "P", "Appropriations from the start to this year added up, money of the times of payment", FAN);
        columns.add(error("fit_error", "Error of the fit"));
        addPercentiles(columns, "more_p", "More than the baseline, P", "The same less that of the baseline in the same draw; below zero when less", FAN);
        columns.add(error("more_fit_error", "Its error"));
        return new ResultTable("what_if_spent", "What is spent up to each year over all draws", columns, rows);
    }

    private ResultColumn error(String name, String label) {
        return amount(name, label, FitTable.MISSED + ".");
    }

    private static void addPercentiles(List<Object> row, SortedDraws draws, int... percentiles) {
        IntStream.of(percentiles).forEach(p -> row.add(draws.quantile(p / 100.0)));
    }

    private void addPercentiles(List<ResultColumn> columns, String name, String label, String what, int... percentiles) {
        IntStream.of(percentiles).forEach(p -> columns.add(amount(name + p, label + p, what + "; " + p + " draws of a hundred stay below.")));
    }

    /** What each plan costs more than the cheapest of each draw. */
    private ResultTable regret() {
        List<List<Object>> rows = new ArrayList<>();
        for (int plan = 0; plan < base.plans().size(); plan++) {
            SortedDraws regret = run.regret(plan);
            Band best = run.plans().best(plan).band(CONFIDENCE);
            List<Object> row = new ArrayList<>(List.of(name(plan), percent(best.value()), percent(best.low()), percent(best.high()),
                    Arrays.stream(run.plans().regret(plan)).average().orElse(0)));
            addPercentiles(row, regret, REGRETS);
            row.add(regret.quantile(1));
            rows.add(row);
        }
        List<ResultColumn> columns = new ArrayList<>(List.of(plan(),
                share("best", "Cheapest of all", "Share of draws in which no other plan costs less."),
                share("best_low", "Likely from", "Lower end of its 95 % interval (Wilson)."), share("best_high", "Likely to", "Upper end."),
                amount("mean", "Mean regret", "Mean of what it costs more than the cheapest plan of each draw.")));
        addPercentiles(columns, "p", "P", "What it costs more than the cheapest plan of each draw", REGRETS);
        columns.add(amount("most", "Most", "The largest of all draws."));
        return new ResultTable("what_if_regret", "Regret of each plan over all draws", columns, rows);
    }

    /** How the regret of each plan is spread. */
    private ResultTable regretBars() {
        List<double[]> regrets = IntStream.range(0, base.plans().size()).mapToObj(run.plans()::regret).toList();
        double most = regrets.stream().flatMapToDouble(Arrays::stream).max().orElse(0);
        List<List<Object>> rows = new ArrayList<>();
        for (int plan = 0; plan < regrets.size(); plan++) {
            for (Histogram.Bar bar : Histogram.of(regrets.get(plan), 0, most, BARS)) {
                rows.add(List.of(name(plan), bar.from(), bar.to(), bar.draws()));
            }
        }
        return new ResultTable("what_if_regret_spread", "How the regret of each plan is spread", List.of(plan(),
                amount("from", "From", "Least regret of the bar."), amount("to", "To", "What it stays below; the last bar holds the largest regret."),
                count("draws", "Draws", "Draws whose regret lies between.")), rows);
    }

    private ResultColumn amount(String name, String label, String meaning) {
        return new ResultColumn(name, label, base.input().currency(), Type.MONEY, meaning);
    }

    private String name(int plan) {
        return base.plans().get(plan).name();
    }
}
