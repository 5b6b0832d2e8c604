package org.amberyard.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.amberyard.core.variants.AllTogether;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.BudgetRisk;
import org.amberyard.core.whatif.SortedDraws;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;

/** What must be appropriated for a plan in each fiscal year over the draws, as a fan, against its cap; and what is at risk. */
final class AppropriationFanChart {
    private static final String NAME = "what_if_budget";
    private static final String TITLE = "Budget at risk by year";
    private static final int HEIGHT = 440;
    private static final double CONFIDENCE = 0.95;

    private final ComparedPlans plans;
    private final AllTogether run;
    private final List<SortedDraws> years;
    private final DrawFan fan;
    private final ChartTheme theme;

    private AppropriationFanChart(ComparedPlans plans, AllTogether run, ChartTheme theme) {
        this.plans = plans;
        this.run = run;
        this.years = IntStream.range(0, plans.base().input().years()).mapToObj(y -> run.appropriation(plans.plan(), y)).toList();
        this.fan = new DrawFan(plans, years, theme);
        this.theme = theme;
    }

    static Chart of(WhatIfResults results, int plan, ChartTheme theme) {
        if (results.all().isEmpty()) {
            return ChartFrame.none(NAME, TITLE, "Not worked out yet", HEIGHT, theme);
        }
        AppropriationFanChart build = new AppropriationFanChart(new ComparedPlans(results, plan), results.all().get(), theme);
        return new Chart(NAME, TITLE, build.chart(), build.caption(), build.data(), HEIGHT, ChartFrame.LEAST_HEIGHT, Subjects.NONE);
    }

    private JFreeChart chart() {
        XYPlot plot = fan.plot("Appropriation (" + plans.currency() + ", money of the year)");
        cap().ifPresent(cap -> plot.addRangeMarker(new ValueMarker(cap, theme.fails(false), theme.planStroke(1))));
        plot.setFixedLegendItems(legend());
        return ChartFrame.around(plot, TITLE, caption(), theme);
    }

    private OptionalDouble cap() {
        return plans.base().plans().get(plans.plan()).plan().payment().yearlyCap();
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = fan.legend();
        if (cap().isPresent()) {
            items.add(ChartFrame.line("cap", theme.planStroke(1), theme.fails(false)));
        }
        return items;
    }

    private BudgetRisk risk(int year) {
        return run.budgetRisk(plans.plan(), year, CONFIDENCE);
    }

    private String caption() {
        int worst = IntStream.range(0, years.size()).boxed().max((a, b) -> Double.compare(risk(a).atRisk(), risk(b).atRisk()))
                .orElseThrow();
        String against = cap().isPresent() ? "the cap" : "what the study appropriates";
        return "“" + plans.name() + "”: most is at risk in " + fan.calendar(worst) + ": " + reached(risk(worst).atRisk(), against)
                + "; above it at all in " + Figures.wholePercent(risk(worst).over().share())
                + " of the draws." + plans.fitted(run.missed().appropriations().get(plans.plan()).get(worst));
    }

    /** A value that one draw in twenty exceeds. */
    private String reached(double amount, String limit) {
        return "one draw in twenty is " + (amount < 0 ? "less than " + plans.money(-amount) + " below " : plans.money(amount)
                + " or more above ") + limit;
    }

    private ChartData data() {
        List<String> headers = new ArrayList<>(fan.headers());
        headers.addAll(List.of("At risk (" + plans.currency() + ")", "Above it (%)"));
        return new ChartData(headers, IntStream.range(0, years.size()).mapToObj(y -> {
            List<Object> row = fan.row(y);
            row.addAll(List.of(risk(y).atRisk(), 100 * risk(y).over().share()));
            return row;
        }).toList());
    }
}
