package org.amberyard.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.amberyard.core.money.BreakEven;
import org.amberyard.core.variants.BreakEvenLine;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.BreakEvenCurve;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** The value of one input at which a plan costs as much as the baseline, over the values of another. */
final class BreakEvenChart {
    private static final String NAME = "what_if_break_even";
    private static final String TITLE = "Break-even";
    private static final int HEIGHT = 420;

    private final ComparedPlans plans;
    private final BreakEvenLine run;
    private final ChartTheme theme;

    private BreakEvenChart(ComparedPlans plans, BreakEvenLine run, ChartTheme theme) {
        this.plans = plans;
        this.run = run;
        this.theme = theme;
    }

    static Chart of(WhatIfResults results, int plan, ChartTheme theme) {
        if (results.breakEven().isEmpty()) {
            return ChartFrame.none(NAME, TITLE, "Not worked out yet; it takes two inputs that are no lists", HEIGHT, theme);
        }
        BreakEvenChart build = new BreakEvenChart(new ComparedPlans(results, plan), results.breakEven().get(), theme);
        if (build.points().stream().allMatch(p -> p.at().values().isEmpty())) {
            return ChartFrame.none(NAME, TITLE, build.caption(), HEIGHT, theme);
        }
        return new Chart(NAME, TITLE, build.chart(), build.caption(), build.data(), HEIGHT, ChartFrame.LEAST_HEIGHT, Subjects.NONE);
    }

    private List<BreakEvenCurve> points() {
        return run.plans().get(plans.plan());
    }

    /** A line for each change of the cheaper plan, counted from below. */
    private JFreeChart chart() {
        XYSeriesCollection data = new XYSeriesCollection();
        int lines = points().stream().mapToInt(p -> p.at().values().size()).max().orElse(0);
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, true);
        LegendItemCollection legend = new LegendItemCollection();
        for (int line = 0; line < lines; line++) {
            XYSeries series = new XYSeries(line);
            for (BreakEvenCurve point : points()) {
                if (line < point.at().values().size()) {
                    series.add(point.other(), point.at().values().get(line));
                }
            }
            data.addSeries(series);
            renderer.setSeriesPaint(line, theme.plan(1 + line));
            renderer.setSeriesStroke(line, theme.planStroke(line));
            legend.add(ChartFrame.line(side(line), theme.planStroke(line), theme.plan(1 + line)));
        }
        renderer.setDefaultToolTipGenerator((d, row, item) -> plans.input(run.second()) + " " + words(run.second(), d.getXValue(row, item))
                + ": costs the same at " + plans.input(run.first()) + " " + words(run.first(), d.getYValue(row, item)));
        NumberAxis across = ChartFrame.valueAxis(plans.input(run.second()),
                new InputTickFormat(plans.results().inputs(), run.second()), theme);
        NumberAxis upward = ChartFrame.valueAxis(plans.input(run.first()),
                new InputTickFormat(plans.results().inputs(), run.first()), theme);
        across.setAutoRangeIncludesZero(false);
        upward.setAutoRangeIncludesZero(false);
        XYPlot plot = new XYPlot(data, across, upward, renderer);
        ChartFrame.style(plot, theme);
        plot.setRangeZeroBaselineVisible(false);
        plot.setFixedLegendItems(legend);
        return ChartFrame.around(plot, TITLE, caption(), theme);
    }

    private String side(int line) {
        BreakEven any = points().stream().map(BreakEvenCurve::at).filter(at -> at.values().size() > line).findFirst().orElseThrow();
        return "costs the same; " + (any.stretches().get(line + 1).cheaper() == BreakEven.Cheaper.PLAN ? "above" : "below") + " the line “"
                + plans.name() + "” costs less";
    }

    private String words(int input, double value) {
        return plans.results().inputs().words(input, value);
    }

    private String caption() {
        if (points().isEmpty()) {
            return "“" + plans.name() + "” is the baseline; choose another plan.";
        }
        BreakEvenCurve middle = points().get(points().size() / 2);
        return "With " + plans.input(run.second()) + " at " + words(run.second(), middle.other()) + ", " + middle.at().words(
                "“" + plans.name() + "”", "“" + plans.baselineName() + "”", v -> plans.input(run.first()) + " " + words(run.first(), v))
                + " (looked for from " + words(run.first(), run.low()) + " to " + words(run.first(), run.high()) + ")."
                + plans.fitted(run.missed().savings().get(plans.plan()));
    }

    private ChartData data() {
        List<List<Object>> rows = new ArrayList<>();
        for (BreakEvenCurve point : points()) {
            rows.add(List.of(point.other(), point.at().values().stream().map(v -> words(run.first(), v)).collect(Collectors.joining("; "))));
        }
        return new ChartData(List.of(plans.input(run.second()), "Costs the same at " + plans.input(run.first())), rows);
    }
}
