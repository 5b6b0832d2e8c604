package org.amberyard.charts;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.amberyard.core.variants.OneAtATime;
import org.amberyard.core.variants.VariedInputs;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.Tornado;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.annotations.CategoryTextAnnotation;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.DefaultIntervalCategoryDataset;

/** What each uncertain input by itself, and each group of them together, does to the saving of a plan, the widest first. */
final class TornadoChart {
    private static final String NAME = "what_if_tornado";
    private static final String TITLE = "One input at a time";
    private static final int HEIGHT_AROUND = 150;
    private static final int HEIGHT_PER_INPUT = 30;
    private static final double ROOM_FOR_LABELS = 0.16;

    private final ComparedPlans plans;
    private final OneAtATime run;
    private final Tornado tornado;
    private final ChartTheme theme;

    private TornadoChart(ComparedPlans plans, OneAtATime run, ChartTheme theme) {
        this.plans = plans;
        this.run = run;
        this.tornado = run.saving(plans.plan(), plans.baseline());
        this.theme = theme;
    }

    static Chart of(WhatIfResults results, int plan, ChartTheme theme) {
        if (results.single().isEmpty()) {
            return ChartFrame.none(NAME, TITLE, "Not worked out yet", HEIGHT_AROUND + HEIGHT_PER_INPUT, theme);
        }
        TornadoChart build = new TornadoChart(new ComparedPlans(results, plan), results.single().get(), theme);
        int height = HEIGHT_AROUND + HEIGHT_PER_INPUT * Math.max(3, build.tornado.bars().size());
        return new Chart(NAME, TITLE, build.chart(), build.sentences(), build.data(), height, ChartFrame.least(height), Subjects.NONE);
    }

    private JFreeChart chart() {
        SwingBars bars = new SwingBars(theme);
        bars.setDefaultToolTipGenerator((data, row, column) -> tip(tornado.bars().get(column), row));
        CategoryPlot plot = new CategoryPlot(dataset(), WaterfallBars.causeAxis(theme), savingAxis(), bars);
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
        ChartFrame.style(plot, theme);
        plot.addRangeMarker(new ValueMarker(tornado.base(), theme.text(), ChartFrame.THIN));
        tornado.bars().forEach(bar -> label(plot, bar));
        LegendItemCollection legend = new LegendItemCollection();
        legend.add(ChartFrame.swatch("input low: one in ten stays below", theme.passes(true)));
        legend.add(ChartFrame.swatch("input high: one in ten exceeds", theme.passes(false)));
        plot.setFixedLegendItems(legend);
        return ChartFrame.around(plot, TITLE, caption(), theme);
    }

    private DefaultIntervalCategoryDataset dataset() {
        List<Tornado.Bar> bars = tornado.bars();
        double[][] from = new double[2][bars.size()];
        double[][] to = new double[2][bars.size()];
        for (int i = 0; i < bars.size(); i++) {
            double[] ends = {bars.get(i).atLow(), bars.get(i).atHigh()};
            for (int end = 0; end < 2; end++) {
                from[end][i] = Math.min(tornado.base(), ends[end]);
                to[end][i] = Math.max(tornado.base(), ends[end]);
            }
        }
        return new DefaultIntervalCategoryDataset(new String[] {"low", "high"},
                bars.stream().map(bar -> plans.input(bar.input())).toArray(String[]::new), box(from), box(to));
    }

    private static Number[][] box(double[][] values) {
        Number[][] boxed = new Number[values.length][];
        for (int row = 0; row < values.length; row++) {
            boxed[row] = Arrays.stream(values[row]).boxed().toArray(Number[]::new);
        }
        return boxed;
    }

    private void label(CategoryPlot plot, Tornado.Bar bar) {
        boolean rising = bar.atHigh() >= bar.atLow();
        note(plot, bar, rising ? bar.atLow() : bar.atHigh(), rising ? low(bar) : high(bar), TextAnchor.CENTER_RIGHT);
        note(plot, bar, rising ? bar.atHigh() : bar.atLow(), rising ? high(bar) : low(bar), TextAnchor.CENTER_LEFT);
    }

    private void note(CategoryPlot plot, Tornado.Bar bar, double at, String words, TextAnchor anchor) {
        double outside = anchor == TextAnchor.CENTER_RIGHT ? Math.min(at, tornado.base()) : Math.max(at, tornado.base());
        CategoryTextAnnotation note = new CategoryTextAnnotation(" " + words + " ", plans.input(bar.input()), outside);
        note.setTextAnchor(anchor);
        note.setFont(theme.tickFont());
        note.setPaint(theme.quietText());
        plot.addAnnotation(note);
    }

    private String low(Tornado.Bar bar) {
        return run.words(plans.results().inputs(), bar.input(), true);
    }

    private String high(Tornado.Bar bar) {
        return run.words(plans.results().inputs(), bar.input(), false);
    }

    private String tip(Tornado.Bar bar, int row) {
        double saving = row == 0 ? bar.atLow() : bar.atHigh();
        return plans.input(bar.input()) + " at " + (row == 0 ? low(bar) : high(bar)) + ": “" + plans.name() + "” "
                + plans.saving(saving);
    }

    private NumberAxis savingAxis() {
        double least = tornado.bars().stream().mapToDouble(b -> Math.min(b.atLow(), b.atHigh())).min().orElse(tornado.base());
        double most = tornado.bars().stream().mapToDouble(b -> Math.max(b.atLow(), b.atHigh())).max().orElse(tornado.base());
        NumberAxis axis = ChartFrame.valueAxis(plans.savingLabel(), MoneyTickFormat.reaching(Math.max(-least, most)), theme);
        double room = ROOM_FOR_LABELS * Math.max(1, most - least);
        axis.setRange(least - room, most + room);
        return axis;
    }

    private String caption() {
        return "“" + plans.name() + "” " + plans.saving(tornado.base()) + " with all inputs as they are. All low together add "
                + plans.money(tornado.lowInteraction()) + " to the sum of the single changes, all high "
                + plans.money(tornado.highInteraction()) + ".";
    }

    private String sentences() {
        StringBuilder text = new StringBuilder(caption());
        tornado.bars().stream().limit(5).forEach(bar -> text.append(' ').append(plans.input(bar.input())).append(": ").append(low(bar))
                .append(" ").append(plans.saving(bar.atLow())).append(", ").append(high(bar)).append(" ").append(plans.saving(bar.atHigh()))
                .append('.'));
        return text.toString();
    }

    private ChartData data() {
        String money = plans.currency();
        return new ChartData(List.of("Input", "Unit", "Low", "Study", "High", "Saving at low (" + money + ")", "Saving (" + money + ")",
                "Saving at high (" + money + ")"),
                tornado.bars().stream().map(this::row).toList());
    }

    private List<Object> row(Tornado.Bar bar) {
        VariedInputs inputs = plans.results().inputs();
        List<Object> row = new ArrayList<>(List.of(plans.input(bar.input()), run.unit(inputs, bar.input())));
        row.addAll(run.values(inputs, bar.input()));
        row.addAll(List.of(bar.atLow(), tornado.base(), bar.atHigh()));
        return row;
    }
}
