package org.amberyard.charts;

import java.awt.Color;
import java.awt.Paint;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.variants.TwoTogether;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.ContourLine;
import org.amberyard.core.whatif.Grid;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.PaintScale;
import org.jfree.chart.renderer.xy.XYBlockRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.DefaultXYDataset;
import org.jfree.data.xy.DefaultXYZDataset;

/** The saving of a plan over two uncertain inputs, in steps of colour, with the line on which it costs as much as the baseline. */
final class TwoInputsChart {
    private static final String NAME = "what_if_grid";
    private static final String TITLE = "Two inputs together";
    private static final int HEIGHT = 460;
    private static final int LEVELS = 5;
    private static final int LEGEND = 4;
    private static final double PALEST = 0.15;
    private static final double STRONGEST = 0.85;

    private final ComparedPlans plans;
    private final TwoTogether run;
    private final double[] saving;
    private final List<ContourLine> even;
    private final ChartTheme theme;

    private TwoInputsChart(ComparedPlans plans, TwoTogether run, ChartTheme theme) {
        this.plans = plans;
        this.run = run;
        this.saving = run.saving(plans.plan());
        this.even = run.breakEven(plans.plan());
        this.theme = theme;
    }

    static Chart of(WhatIfResults results, int plan, ChartTheme theme) {
        if (results.grid().isEmpty()) {
            return ChartFrame.none(NAME, TITLE, "Not worked out yet; it takes two inputs that are no lists", HEIGHT, theme);
        }
        TwoInputsChart build = new TwoInputsChart(new ComparedPlans(results, plan), results.grid().get(), theme);
        return new Chart(NAME, TITLE, build.chart(), build.sentences(), build.data(), HEIGHT, ChartFrame.LEAST_HEIGHT, Subjects.NONE);
    }

    private JFreeChart chart() {
        Grid grid = run.grid();
        DefaultXYZDataset cells = new DefaultXYZDataset();
        cells.addSeries("Saving", new double[][] {IntStream.range(0, grid.evaluations()).mapToDouble(grid::first).toArray(),
            IntStream.range(0, grid.evaluations()).mapToDouble(grid::second).toArray(), saving});
        XYBlockRenderer blocks = new XYBlockRenderer();
        blocks.setBlockWidth(grid.first(1) - grid.first(0));
        blocks.setBlockHeight(grid.second(grid.columns()) - grid.second(0));
        blocks.setPaintScale(scale());
        blocks.setDefaultToolTipGenerator((data, row, item) -> tip(item));
        XYPlot plot = new XYPlot(cells, axis(run.first(), blocks.getBlockWidth(), grid.first(0), grid.first(grid.columns() - 1)),
                axis(run.second(), blocks.getBlockHeight(), grid.second(0), grid.second(grid.evaluations() - 1)), blocks);
        ChartFrame.style(plot, theme);
        plot.setRangeZeroBaselineVisible(false);
        addLines(plot);
        plot.setFixedLegendItems(legend());
        return ChartFrame.around(plot, TITLE, caption(), theme);
    }

    private NumberAxis axis(int input, double step, double low, double high) {
        NumberAxis axis = ChartFrame.valueAxis(plans.input(input), new InputTickFormat(plans.results().inputs(), input), theme);
        axis.setRange(low - step / 2, high + step / 2);
        return axis;
    }

    private void addLines(XYPlot plot) {
        XYLineAndShapeRenderer lines = new XYLineAndShapeRenderer(true, false);
        DefaultXYDataset data = new DefaultXYDataset();
        for (int i = 0; i < even.size(); i++) {
            List<ContourLine.Point> points = new ArrayList<>(even.get(i).points());
            if (even.get(i).closed()) {
                points.add(points.get(0));
            }
            data.addSeries(i, new double[][] {points.stream().mapToDouble(ContourLine.Point::first).toArray(),
                points.stream().mapToDouble(ContourLine.Point::second).toArray()});
            lines.setSeriesPaint(i, theme.text());
            lines.setSeriesStroke(i, theme.planStroke(0));
        }
        plot.setDataset(1, data);
        plot.setRenderer(1, lines);
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
    }

    private double least() {
        return Arrays.stream(saving).min().orElseThrow();
    }

    private double most() {
        return Arrays.stream(saving).max().orElseThrow();
    }

    /** Equal steps, so that they show in print too; the strongest colour lies farthest from costing the same. */
    private Color colour(double value) {
        double nearest = least() < 0 && most() > 0 ? 0 : Math.min(Math.abs(least()), Math.abs(most()));
        double farthest = Math.max(Math.abs(least()), Math.abs(most()));
        double share = farthest > nearest ? (Math.abs(value) - nearest) / (farthest - nearest) : 1;
        double strength = Math.min(LEVELS - 1, Math.floor(LEVELS * share)) / (LEVELS - 1);
        return ChartTheme.between(theme.background(), value < 0 ? theme.fails(false) : theme.passes(false), PALEST + (STRONGEST - PALEST) * strength);
    }

    private PaintScale scale() {
        return new PaintScale() {
            @Override
            public double getLowerBound() {
                return least();
            }

            @Override
            public double getUpperBound() {
                return most();
            }

            @Override
            public Paint getPaint(double value) {
                return colour(value);
            }
        };
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        for (int level = 0; level < LEGEND; level++) {
            double at = least() + (most() - least()) * level / (LEGEND - 1);
            items.add(ChartFrame.swatch(plans.saving(at), colour(at)));
        }
        if (!even.isEmpty()) {
            items.add(ChartFrame.line("costs the same", theme.planStroke(0), theme.text()));
        }
        return items;
    }

    private String tip(int item) {
        return plans.input(run.first()) + " " + words(run.first(), run.grid().first(item)) + ", " + plans.input(run.second()) + " "
                + words(run.second(), run.grid().second(item)) + ": “" + plans.name() + "” " + plans.saving(saving[item]);
    }

    private String words(int input, double value) {
        return plans.results().inputs().words(input, value);
    }

    private String caption() {
        String span = "Saving of “" + plans.name() + "” against “" + plans.baselineName() + "” (" + StatedMoney.present(plans.base().input())
                + "): from " + plans.money(least()) + " to " + plans.money(most()) + ".";
        return span + (even.isEmpty() ? " Within these values it " + (least() > 0 ? "always costs less." : "never costs less.")
                : " On the line both cost the same.");
    }

    private String sentences() {
        return caption() + " Across: " + plans.input(run.first()) + "; upward: " + plans.input(run.second()) + ".";
    }

    private ChartData data() {
        Grid grid = run.grid();
        return new ChartData(List.of(plans.input(run.first()), plans.input(run.second()), "Saving (" + plans.currency() + ")"),
                IntStream.range(0, grid.evaluations()).mapToObj(e -> List.<Object>of(grid.first(e), grid.second(e), saving[e])).toList());
    }
}
