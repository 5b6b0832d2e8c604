package org.amberyard.charts;

import java.awt.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.amberyard.charts.BreakEvenBranches.Branch;
import org.amberyard.charts.BreakEvenBranches.Change;
import org.amberyard.charts.BreakEvenBranches.Direction;
import org.amberyard.core.money.BreakEven;
import org.amberyard.core.variants.BreakEvenLine;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.BreakEvenCurve;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.util.ShapeUtils;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** The value of one input at which a plan costs as much as the baseline, over the values of another. */
final class BreakEvenChart {
    private static final String NAME = "what_if_break_even";
    private static final String TITLE = "Break-even";
    private static final int HEIGHT = 420;
    private static final Shape JUMP = ShapeUtils.createDiagonalCross(5, 1);

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

    /** A line for each branch of changes of the cheaper plan, in a colour for each direction; jumps are marked. */
    private JFreeChart chart() {
        List<Branch> branches = BreakEvenBranches.of(points());
        List<Direction> directions = branches.stream().map(Branch::direction).distinct().toList();
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, true);
        for (Branch branch : branches) {
            int series = data.getSeriesCount();
            int direction = directions.indexOf(branch.direction());
            data.addSeries(series(series, branch.changes()));
            renderer.setSeriesPaint(series, theme.plan(1 + direction));
            renderer.setSeriesStroke(series, theme.planStroke(direction));
        }
        List<Change> jumps = branches.stream().flatMap(b -> b.changes().stream()).filter(Change::jumps).toList();
        data.addSeries(series(branches.size(), jumps));
        renderer.setSeriesLinesVisible(branches.size(), false);
        renderer.setSeriesShape(branches.size(), JUMP);
        renderer.setSeriesPaint(branches.size(), theme.text());
        renderer.setDefaultToolTipGenerator((d, row, item) -> plans.input(run.second()) + " " + words(run.second(), d.getXValue(row, item))
                + (row == branches.size() ? ": what costs less changes at a jump at " : ": costs the same at ") + plans.input(run.first()) + " "
                + words(run.first(), d.getYValue(row, item)));
        return around(data, renderer, legend(directions, !jumps.isEmpty()));
    }

    private static XYSeries series(int key, List<Change> changes) {
        XYSeries series = new XYSeries(key);
        changes.forEach(change -> series.add(change.other(), change.value()));
        return series;
    }

    private JFreeChart around(XYSeriesCollection data, XYLineAndShapeRenderer renderer, LegendItemCollection legend) {
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

    private LegendItemCollection legend(List<Direction> directions, boolean jumps) {
        LegendItemCollection legend = new LegendItemCollection();
        for (int i = 0; i < directions.size(); i++) {
            legend.add(ChartFrame.line("costs the same; " + side(directions.get(i)), theme.planStroke(i), theme.plan(1 + i)));
        }
        if (jumps) {
            legend.add(new LegendItem("jumps over the same cost", null, null, null, JUMP, theme.text()));
        }
        return legend;
    }

    private String side(Direction direction) {
        String name = "“" + plans.name() + "” costs less";
        if (direction.above() == BreakEven.Cheaper.PLAN) {
            return "above the line " + name;
        }
        return direction.below() == BreakEven.Cheaper.PLAN ? "below the line " + name
                : (direction.above() == BreakEven.Cheaper.NEITHER ? "above" : "below") + " the line it does so over a range";
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
                + " (looked for from " + words(run.first(), run.low()) + " to " + words(run.first(), run.high())
                + "; each point is evaluated)." + plans.steps(run.second(), points().stream().mapToDouble(BreakEvenCurve::other).toArray());
    }

    private ChartData data() {
        List<List<Object>> rows = new ArrayList<>();
        for (BreakEvenCurve point : points()) {
            rows.add(List.of(point.other(), changes(point.at().stretches())));
        }
        return new ChartData(List.of(plans.input(run.second()), "Costs the same at " + plans.input(run.first())), rows);
    }

    private String changes(List<BreakEven.Stretch> stretches) {
        return stretches.subList(0, stretches.size() - 1).stream().map(s -> words(run.first(), s.to()) + (s.jumps() ? " (jumps)" : ""))
                .collect(Collectors.joining("; "));
    }
}
