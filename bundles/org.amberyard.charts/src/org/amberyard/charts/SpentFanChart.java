package org.amberyard.charts;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.amberyard.core.variants.AllTogether;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.SortedDraws;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;

/** What has been appropriated for a plan up to each year over the draws, by itself or less that of the baseline, as a fan. */
final class SpentFanChart {
    private static final int HEIGHT = 440;

    private final ComparedPlans plans;
    private final AllTogether run;
    private final boolean difference;
    private final List<SortedDraws> years;
    private final DrawFan fan;
    private final ChartTheme theme;

    private SpentFanChart(ComparedPlans plans, AllTogether run, boolean difference, ChartTheme theme) {
        this.plans = plans;
        this.run = run;
        this.difference = difference;
        this.years = IntStream.range(0, plans.base().input().years()).mapToObj(y -> difference
                ? run.spentMore(plans.plan(), plans.baseline(), y) : run.spent(plans.plan(), y)).toList();
        this.fan = new DrawFan(plans, years, theme);
        this.theme = theme;
    }

    static Chart ofPlan(WhatIfResults results, int plan, ChartTheme theme) {
        return of(results, plan, false, theme);
    }

    static Chart ofDifference(WhatIfResults results, int plan, ChartTheme theme) {
        return of(results, plan, true, theme);
    }

    private static Chart of(WhatIfResults results, int plan, boolean difference, ChartTheme theme) {
        String name = difference ? "what_if_spent_more" : "what_if_spent";
        String title = difference ? "Spent more than the baseline up to each year" : "Spent up to each year";
        if (results.all().isEmpty()) {
            return ChartFrame.none(name, title, "Not worked out yet", HEIGHT, theme);
        }
        SpentFanChart build = new SpentFanChart(new ComparedPlans(results, plan), results.all().get(), difference, theme);
        return new Chart(name, title, build.chart(title), build.caption(), build.data(), HEIGHT, ChartFrame.LEAST_HEIGHT, Subjects.NONE);
    }

    private JFreeChart chart(String title) {
        XYPlot plot = fan.plot("Appropriations added up (" + plans.currency() + ", money of the years)");
        plot.setFixedLegendItems(fan.legend());
        return ChartFrame.around(plot, title, caption(), theme);
    }

    private String caption() {
        SortedDraws end = years.get(years.size() - 1);
        String range = "; by the end of " + fan.calendar(years.size() - 1) + " nine draws in ten lie between " + plans.money(end.quantile(0.05))
                + " and " + plans.money(end.quantile(0.95)) + ".";
        return (difference ? apart() : "“" + plans.name() + "”: half the draws come to less than " + plans.money(end.quantile(0.5)))
                + range + fitted();
    }

    /** From when on half the draws have taken less money than the baseline. */
    private String apart() {
        OptionalInt last = IntStream.range(0, years.size()).filter(y -> years.get(y).quantile(0.5) >= 0).reduce((a, b) -> b);
        int first = last.orElse(-1) + 1;
        String half = "In half the draws “" + plans.name() + "” has taken ";
        return first == years.size() ? half + "no less than “" + plans.baselineName() + "” at the end"
                : half + "less than “" + plans.baselineName() + "” from the end of " + fan.calendar(first) + " on";
    }

    private String fitted() {
        return plans.fitted((difference ? run.missed().spentMore() : run.missed().spent()).get(plans.plan()).get(years.size() - 1));
    }

    private ChartData data() {
        return new ChartData(fan.headers(), IntStream.range(0, years.size()).mapToObj(fan::row).toList());
    }
}
