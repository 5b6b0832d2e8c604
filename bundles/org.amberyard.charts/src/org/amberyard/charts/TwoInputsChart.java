package org.amberyard.charts;

import java.awt.Paint;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.variants.TwoTogether;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.ContourLine;
import org.amberyard.core.whatif.Grid;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.PaintScale;
import org.jfree.chart.renderer.xy.XYBlockRenderer;
import org.jfree.data.xy.DefaultXYZDataset;

/**
 * The saving of a plan over two uncertain inputs, in round steps of colour with lines between them, and the line on which it costs as
 * much as the baseline.
 */
final class TwoInputsChart {
    private static final String NAME = "what_if_grid";
    private static final String TITLE = "Two inputs together";
    private static final int HEIGHT = 460;
    /** Rows of cells are high enough for the amounts, and the name of the input beside them is whole. */
    private static final int LEAST_HEIGHT = 240;
    private static final MathContext DIGITS = new MathContext(12);
    /** Smaller steps would not show in millions with two decimals. */
    private static final double LEAST_TOLD_IN_MILLIONS = 10_000;
    private static final Shape AS_IT_IS = new Ellipse2D.Double(-4, -4, 8, 8);

    private final ComparedPlans plans;
    private final TwoTogether run;
    private final double[] saving;
    private final List<ContourLine> even;
    private final SavingBands bands;
    private final ChartTheme theme;

    private TwoInputsChart(ComparedPlans plans, TwoTogether run, ChartTheme theme) {
        this.plans = plans;
        this.run = run;
        this.saving = run.saving(plans.plan());
        this.even = run.breakEven(plans.plan());
        this.bands = SavingBands.of(least(), most());
        this.theme = theme;
    }

    static Chart of(WhatIfResults results, int plan, ChartTheme theme) {
        if (results.grid().isEmpty()) {
            return ChartFrame.none(NAME, TITLE, TwoTogether.whyNone(results.inputs()).orElse("Not worked out yet"), HEIGHT, theme);
        }
        TwoInputsChart build = new TwoInputsChart(new ComparedPlans(results, plan), results.grid().get(), theme);
        return new Chart(NAME, TITLE, build.chart(), build.sentences(), build.data(), HEIGHT, LEAST_HEIGHT, Subjects.NONE);
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
        contours().addTo(plot);
        plot.setFixedLegendItems(legend());
        return ChartFrame.around(plot, TITLE, caption(), theme);
    }

    private SavingContours contours() {
        SavingContours contours = new SavingContours(theme);
        MoneyTickFormat amounts = MoneyTickFormat.reaching(bands.step() < LEAST_TOLD_IN_MILLIONS ? bands.step() : Math.max(-least(), most()));
        bands.between().forEach(level -> contours.add(ContourLine.of(run.grid(), saving, level), amounts.format(level)));
        contours.addEven(even);
        asItIs().ifPresent(at -> contours.addPoint(at[0], at[1], AS_IT_IS));
        return contours;
    }

    private NumberAxis axis(int input, double step, double low, double high) {
        NumberAxis axis = ChartFrame.valueAxis(plans.input(input), new InputTickFormat(plans.results().inputs(), input), theme);
        axis.setRange(low - step / 2, high + step / 2);
        return axis;
    }

    private double least() {
        return Arrays.stream(saving).min().orElseThrow();
    }

    private double most() {
        return Arrays.stream(saving).max().orElseThrow();
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
                return bands.colour(value, theme);
            }
        };
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        if (least() < 0) {
            items.add(ChartFrame.swatch("costs more", bands.colour(least(), theme)));
        }
        if (most() >= 0) {
            items.add(ChartFrame.swatch("costs less", bands.colour(most(), theme)));
        }
        if (!even.isEmpty()) {
            items.add(ChartFrame.line("costs the same", theme.planStroke(0), theme.text()));
        }
        items.add(ChartFrame.line("steps of " + plans.money(bands.step()), ChartFrame.THIN, theme.quietText()));
        if (asItIs().isPresent()) {
            items.add(new LegendItem("the study as it is", null, null, null, AS_IT_IS, theme.text()));
        }
        return items;
    }

    /** The point of the study's own values, where the grid has it. */
    private Optional<double[]> asItIs() {
        return plans.results().single().map(s -> new double[] {s.spread(run.first()).base(), s.spread(run.second()).base()})
                .filter(at -> within(at[0], run.grid().first(0), run.grid().first(run.grid().columns() - 1))
                        && within(at[1], run.grid().second(0), run.grid().second(run.grid().evaluations() - 1)));
    }

    private static boolean within(double value, double low, double high) {
        return low <= value && value <= high;
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

    /** A row for each value of the input that runs upward, as a spreadsheet has a table of two inputs. */
    private ChartData data() {
        Grid grid = run.grid();
        List<String> columns = new ArrayList<>(List.of("Saving (" + plans.currency() + "): " + plans.input(run.second()) + " down, "
                + plans.input(run.first()) + " across"));
        IntStream.range(0, grid.columns()).forEach(column -> columns.add(new BigDecimal(grid.first(column)).round(DIGITS)
                .stripTrailingZeros().toPlainString()));
        return new ChartData(columns, IntStream.range(0, grid.rows()).mapToObj(this::row).toList());
    }

    private List<Object> row(int row) {
        int first = row * run.grid().columns();
        return Stream.concat(Stream.of(run.grid().second(first)), IntStream.range(first, first + run.grid().columns()).mapToObj(e -> saving[e]))
                .map(Object.class::cast).toList();
    }
}
