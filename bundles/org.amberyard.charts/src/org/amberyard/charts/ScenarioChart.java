package org.amberyard.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.variants.Scenarios;
import org.amberyard.core.variants.WhatIfResults;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.data.category.DefaultCategoryDataset;

/** Present costs of all plans in the study and in each of its scenarios; names tell which plan is cheapest where. */
final class ScenarioChart {
    private static final String NAME = "what_if_scenarios";
    private static final String TITLE = "Scenarios";
    private static final String AS_IS = "The study as it is";
    private static final int HEIGHT_AROUND = 150;
    private static final int HEIGHT_PER_BAR = 17;
    private static final int GAP = 16;

    private final ComparedPlans plans;
    private final Scenarios run;
    private final ChartTheme theme;

    private ScenarioChart(ComparedPlans plans, Scenarios run, ChartTheme theme) {
        this.plans = plans;
        this.run = run;
        this.theme = theme;
    }

    static Chart of(WhatIfResults results, int plan, ChartTheme theme) {
        if (results.scenarios().isEmpty()) {
            return ChartFrame.none(NAME, TITLE, "The study names no scenarios, or they are not worked out yet", 260, theme);
        }
        ScenarioChart build = new ScenarioChart(new ComparedPlans(results, plan), results.scenarios().get(), theme);
        int height = HEIGHT_AROUND + (1 + build.run.names().size()) * (GAP + HEIGHT_PER_BAR * results.base().plans().size());
        return new Chart(NAME, TITLE, build.chart(), build.sentences(), build.data(), height, ChartFrame.least(height), Subjects.NONE);
    }

    private int count() {
        return plans.base().plans().size();
    }

    private String name(int plan) {
        return plans.base().plans().get(plan).name();
    }

    /** Present cost in a scenario; before the first is the study as it is. */
    private double cost(int plan, int scenario) {
        return scenario < 0 ? plans.base().plans().get(plan).measures().presentCost() : run.presentCost(plan, scenario);
    }

    private String scenario(int scenario) {
        return scenario < 0 ? AS_IS : run.names().get(scenario);
    }

    private JFreeChart chart() {
        DefaultCategoryDataset data = new DefaultCategoryDataset();
        double most = 0;
        for (int scenario = -1; scenario < run.names().size(); scenario++) {
            for (int plan = 0; plan < count(); plan++) {
                data.addValue(cost(plan, scenario), name(plan), scenario(scenario));
                most = Math.max(most, cost(plan, scenario));
            }
        }
        BarRenderer bars = new BarRenderer();
        bars.setBarPainter(new StandardBarPainter());
        bars.setShadowVisible(false);
        bars.setItemMargin(0.08);
        LegendItemCollection legend = new LegendItemCollection();
        for (int plan = 0; plan < count(); plan++) {
            bars.setSeriesPaint(plan, theme.plan(plan));
            legend.add(ChartFrame.swatch(name(plan), theme.plan(plan)));
        }
        bars.setDefaultToolTipGenerator((d, row, column) -> d.getColumnKey(column) + ", " + d.getRowKey(row) + ": "
                + plans.money(d.getValue(row, column).doubleValue()));
        CategoryPlot plot = new CategoryPlot(data, WaterfallBars.causeAxis(theme), ChartFrame.valueAxis("Present cost ("
                + StatedMoney.present(plans.base().input()) + ")", MoneyTickFormat.reaching(most), theme), bars);
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
        ChartFrame.style(plot, theme);
        plot.setFixedLegendItems(legend);
        return ChartFrame.around(plot, TITLE, sentences(), theme);
    }

    private int cheapest(int scenario) {
        return IntStream.range(0, count()).boxed().min((a, b) -> Double.compare(cost(a, scenario), cost(b, scenario))).orElseThrow();
    }

    private String sentences() {
        int now = cheapest(-1);
        String others = IntStream.range(0, run.names().size()).filter(s -> cheapest(s) != now)
                .mapToObj(s -> "in “" + run.names().get(s) + "” “" + name(cheapest(s)) + "”").collect(Collectors.joining(", "));
        return "Cheapest is “" + name(now) + "”" + (others.isEmpty() ? ", in every scenario too." : "; " + others + ".");
    }

    private ChartData data() {
        List<List<Object>> rows = new ArrayList<>();
        for (int scenario = -1; scenario < run.names().size(); scenario++) {
            for (int plan = 0; plan < count(); plan++) {
                rows.add(List.of(scenario(scenario), name(plan), cost(plan, scenario)));
            }
        }
        return new ChartData(List.of("Scenario", "Plan", "Present cost (" + plans.currency() + ")"), rows);
    }
}
