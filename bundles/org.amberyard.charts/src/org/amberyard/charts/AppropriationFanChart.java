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
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;

/** What must be appropriated for a plan in each fiscal year over the draws, as a fan, against its cap; and what is at risk. */
final class AppropriationFanChart {
    private static final String NAME = "what_if_budget";
    private static final String TITLE = "Budget at risk by year";
    private static final int HEIGHT = 440;
    private static final double CONFIDENCE = 0.95;
    private static final double[][] BANDS = {{0.05, 0.95}, {0.25, 0.75}};

    private final ComparedPlans plans;
    private final AllTogether run;
    private final List<SortedDraws> years;
    private final ChartTheme theme;

    private AppropriationFanChart(ComparedPlans plans, AllTogether run, ChartTheme theme) {
        this.plans = plans;
        this.run = run;
        this.years = IntStream.range(0, plans.base().input().years()).mapToObj(y -> run.appropriation(plans.plan(), y)).toList();
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
        double most = years.stream().mapToDouble(y -> y.quantile(BANDS[0][1])).max().orElseThrow();
        NumberAxis calendar = ChartFrame.valueAxis("Fiscal year", Figures.pattern("0"), theme);
        calendar.setTickUnit(new NumberTickUnit(years.size() > 20 ? 5 : years.size() > 10 ? 2 : 1));
        calendar.setAutoRangeIncludesZero(false);
        XYPlot plot = new XYPlot(null, calendar, ChartFrame.valueAxis("Appropriation (" + plans.currency() + ", money of the year)",
                MoneyTickFormat.reaching(most), theme), null);
        ChartFrame.style(plot, theme);
        BandLines fan = new BandLines(theme);
        fan.add("nine in ten", points(BANDS[0]), theme.plan(1), theme.passes(true), false);
        fan.add("half", points(BANDS[1]), theme.text(), ChartTheme.between(theme.passes(true), theme.passes(false), 0.6), true);
        fan.renderer().setDefaultToolTipGenerator((data, row, item) -> tip(item));
        fan.addTo(plot);
        cap().ifPresent(cap -> plot.addRangeMarker(new ValueMarker(cap, theme.fails(false), theme.planStroke(1))));
        plot.setFixedLegendItems(legend());
        return ChartFrame.around(plot, TITLE, caption(), theme);
    }

    private List<BandLines.Point> points(double[] band) {
        List<BandLines.Point> points = new ArrayList<>();
        for (int year = 0; year < years.size(); year++) {
            points.add(new BandLines.Point(calendar(year), years.get(year).quantile(0.5), years.get(year).quantile(band[0]),
                    years.get(year).quantile(band[1])));
        }
        return points;
    }

    private int calendar(int year) {
        return plans.base().input().baseYear() + year;
    }

    private OptionalDouble cap() {
        return plans.base().plans().get(plans.plan()).plan().payment().yearlyCap();
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        items.add(ChartFrame.line("half the draws stay below", theme.planStroke(0), theme.text()));
        items.add(ChartFrame.swatch("half of the draws", ChartTheme.between(theme.passes(true), theme.passes(false), 0.6)));
        items.add(ChartFrame.swatch("nine in ten", theme.passes(true)));
        if (cap().isPresent()) {
            items.add(ChartFrame.line("cap", theme.planStroke(1), theme.fails(false)));
        }
        return items;
    }

    private String tip(int year) {
        return calendar(year) + ": " + plans.money(years.get(year).quantile(0.05)) + " to "
                + plans.money(years.get(year).quantile(0.95)) + " in nine draws out of ten";
    }

    private BudgetRisk risk(int year) {
        return run.budgetRisk(plans.plan(), year, CONFIDENCE);
    }

    private String caption() {
        int worst = IntStream.range(0, years.size()).boxed().max((a, b) -> Double.compare(risk(a).atRisk(), risk(b).atRisk()))
                .orElseThrow();
        String against = cap().isPresent() ? "the cap" : "what the study appropriates";
        return "“" + plans.name() + "”: most is at risk in " + calendar(worst) + ": " + reached(risk(worst).atRisk(), against)
                + "; above it at all in " + Figures.wholePercent(risk(worst).over().share())
                + " of the draws." + plans.fitted(run.missed().appropriations().get(plans.plan()).get(worst));
    }

    /** A value that one draw in twenty exceeds. */
    private String reached(double amount, String limit) {
        return "one draw in twenty is " + (amount < 0 ? "less than " + plans.money(-amount) + " below " : plans.money(amount)
                + " or more above ") + limit;
    }

    private ChartData data() {
        String money = " (" + plans.currency() + ")";
        return new ChartData(List.of("Fiscal year", "P5" + money, "P25" + money, "P50" + money, "P75" + money, "P95" + money,
                "At risk" + money, "Above it (%)"), IntStream.range(0, years.size()).mapToObj(y -> List.<Object>of(calendar(y),
                        years.get(y).quantile(0.05), years.get(y).quantile(0.25), years.get(y).quantile(0.5), years.get(y).quantile(0.75),
                        years.get(y).quantile(0.95), risk(y).atRisk(), 100 * risk(y).over().share())).toList());
    }
}
