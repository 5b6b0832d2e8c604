package org.amberyard.charts;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.amberyard.core.money.BreakEven;
import org.amberyard.core.variants.BreakEvenSurface;
import org.amberyard.core.variants.WhatIfResults;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYBlockRenderer;
import org.jfree.data.xy.DefaultXYZDataset;

/** The value of one input at which a plan costs as much as the baseline, in each cell of a grid of two others. */
final class BreakEvenSurfaceChart {
    private static final String NAME = "what_if_break_even_surface";
    private static final String TITLE = "Break-even over two inputs";
    private static final int HEIGHT = 420;
    private static final double PALEST = 0.1;
    private static final double STRONGEST = 0.6;

    private final ComparedPlans plans;
    private final BreakEvenSurface run;
    private final List<BreakEven> cells;
    private final ChartTheme theme;
    private final double least;
    private final double most;

    private BreakEvenSurfaceChart(ComparedPlans plans, BreakEvenSurface run, ChartTheme theme) {
        this.plans = plans;
        this.run = run;
        this.cells = run.plans().get(plans.plan());
        this.theme = theme;
        this.least = values().min().orElse(0);
        this.most = values().max().orElse(0);
    }

    static Chart of(WhatIfResults results, int plan, ChartTheme theme) {
        if (results.breakEvens().surface().isEmpty()) {
            return ChartFrame.none(NAME, TITLE, "Not worked out yet; it takes three inputs that are no lists", HEIGHT, theme);
        }
        BreakEvenSurfaceChart build = new BreakEvenSurfaceChart(new ComparedPlans(results, plan), results.breakEvens().surface().get(), theme);
        if (build.cells.isEmpty()) {
            return ChartFrame.none(NAME, TITLE, build.caption(), HEIGHT, theme);
        }
        return new Chart(NAME, TITLE, build.chart(), build.sentences(), build.data(), HEIGHT, ChartFrame.LEAST_HEIGHT, Subjects.NONE);
    }

    private DoubleStream values() {
        return cells.stream().map(BreakEvenSurfaceChart::first).flatMapToDouble(OptionalDouble::stream);
    }

    private static OptionalDouble first(BreakEven at) {
        return at.values().stream().mapToDouble(v -> v).findFirst();
    }

    private JFreeChart chart() {
        int columns = run.grid().columns();
        DefaultXYZDataset data = new DefaultXYZDataset();
        data.addSeries("Break-even", new double[][] {each(cell -> cell % columns), each(cell -> cell / columns), each(cell -> cell)});
        XYBlockRenderer blocks = new XYBlockRenderer();
        blocks.setPaintScale(new CellPaints(cells.stream().map(this::colour).toList()));
        blocks.setDefaultToolTipGenerator((d, row, item) -> tip(item));
        XYPlot plot = new XYPlot(data, axis(run.first(), IntStream.range(0, columns).mapToObj(run.grid()::first).toList()),
                axis(run.second(), IntStream.range(0, run.grid().rows()).mapToObj(r -> run.grid().second(r * columns)).toList()), blocks);
        ChartFrame.style(plot, theme);
        plot.setRangeZeroBaselineVisible(false);
        plot.setRangeGridlinesVisible(false);
        IntStream.range(0, cells.size()).forEach(cell -> plot.addAnnotation(label(cell, columns)));
        plot.setFixedLegendItems(legend());
        return ChartFrame.around(plot, TITLE, caption(), theme);
    }

    private double[] each(IntToDoubleFunction of) {
        return IntStream.range(0, cells.size()).mapToDouble(of).toArray();
    }

    private SymbolAxis axis(int input, List<Double> values) {
        SymbolAxis axis = new SymbolAxis(plans.input(input), values.stream().map(v -> words(input, v)).toArray(String[]::new));
        ChartFrame.style(axis, theme);
        axis.setLabelFont(theme.labelFont());
        axis.setLabelPaint(theme.quietText());
        axis.setGridBandsVisible(false);
        axis.setTickMarksVisible(false);
        axis.setRange(-0.5, values.size() - 0.5);
        return axis;
    }

    private XYTextAnnotation label(int cell, int columns) {
        XYTextAnnotation label = new XYTextAnnotation(shown(cells.get(cell)), cell % columns, cell / columns);
        label.setFont(theme.tickFont());
        label.setPaint(theme.text());
        return label;
    }

    /** All changes of a cell; a jump is marked. */
    private String shown(BreakEven at) {
        List<BreakEven.Stretch> all = at.stretches();
        return all.size() < 2 ? "none" : all.subList(0, all.size() - 1).stream()
                .map(s -> words(run.searched(), s.to()) + (s.jumps() ? " ↕" : "")).collect(Collectors.joining("; "));
    }

    private Color colour(BreakEven at) {
        OptionalDouble value = first(at);
        if (value.isEmpty()) {
            return at.stretches().isEmpty() ? theme.gridline() : always(at) ? theme.passes(true) : theme.fails(true);
        }
        double share = most > least ? (value.getAsDouble() - least) / (most - least) : 0;
        return ChartTheme.between(theme.background(), theme.plan(1), PALEST + (STRONGEST - PALEST) * share);
    }

    private static boolean always(BreakEven at) {
        return at.stretches().get(0).cheaper() == BreakEven.Cheaper.PLAN;
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        if (values().findAny().isPresent()) {
            items.add(ChartFrame.swatch("costs the same at " + plans.input(run.searched()) + " " + words(run.searched(), least),
                    ChartTheme.between(theme.background(), theme.plan(1), PALEST)));
            items.add(ChartFrame.swatch("at " + words(run.searched(), most), ChartTheme.between(theme.background(), theme.plan(1), STRONGEST)));
        }
        if (cells.stream().anyMatch(c -> c.stretches().size() == 1 && always(c))) {
            items.add(ChartFrame.swatch("none: always costs less", theme.passes(true)));
        }
        if (cells.stream().anyMatch(c -> c.stretches().size() == 1 && !always(c))) {
            items.add(ChartFrame.swatch("none: never costs less", theme.fails(true)));
        }
        return items;
    }

    private String tip(int cell) {
        BreakEven at = cells.get(cell);
        String where = plans.input(run.first()) + " " + words(run.first(), run.grid().first(cell)) + ", " + plans.input(run.second()) + " "
                + words(run.second(), run.grid().second(cell)) + ": ";
        return where + (at.stretches().isEmpty() ? "not allowed by the study" : inWords(at));
    }

    private String inWords(BreakEven at) {
        return at.words("“" + plans.name() + "”", "“" + plans.baselineName() + "”",
                v -> plans.input(run.searched()) + " " + words(run.searched(), v));
    }

    private String words(int input, double value) {
        return plans.results().inputs().words(input, value);
    }

    private String caption() {
        if (cells.isEmpty()) {
            return "“" + plans.name() + "” is the baseline; choose another plan.";
        }
        return plans.input(run.searched()) + " at which “" + plans.name() + "” costs as much as “" + plans.baselineName()
                + "”, looked for from " + words(run.searched(), run.low()) + " to " + words(run.searched(), run.high())
                + "; each cell is evaluated" + (jumps() ? "; ↕ the difference jumps there." : ".")
                + plans.steps(run.first(), each(run.grid()::first)) + plans.steps(run.second(), each(run.grid()::second));
    }

    private boolean jumps() {
        return cells.stream().flatMap(c -> c.stretches().stream()).anyMatch(BreakEven.Stretch::jumps);
    }

    private String sentences() {
        int middle = cells.size() / 2;
        return caption() + " " + tip(middle) + ". In " + cells.stream().filter(c -> first(c).isEmpty()).count() + " of " + cells.size()
                + " cells there is none.";
    }

    private ChartData data() {
        List<List<Object>> rows = new ArrayList<>();
        for (int cell = 0; cell < cells.size(); cell++) {
            rows.add(List.of(run.grid().first(cell), run.grid().second(cell), shown(cells.get(cell))));
        }
        return new ChartData(List.of(plans.input(run.first()), plans.input(run.second()), "Costs the same at " + plans.input(run.searched())),
                rows);
    }
}
