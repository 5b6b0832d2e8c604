package org.amberyard.charts;

import java.awt.Color;
import java.awt.Paint;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.amberyard.core.money.BreakEven;
import org.amberyard.core.money.BreakEven.Stretch;
import org.amberyard.core.variants.BreakEvensAlone;
import org.amberyard.core.variants.WhatIfResults;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.annotations.CategoryTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.DefaultCategoryDataset;

/**
 * What would have to be true: for each input by itself where in its range a plan costs less than the baseline. Ranges are drawn as
 * long as each other, because inputs have units of their own.
 */
final class BreakEvensAloneChart {
    private static final String NAME = "what_would_have_to_be_true";
    private static final String TITLE = "What would have to be true";
    private static final int HEIGHT_AROUND = 140;
    private static final int HEIGHT_PER_INPUT = 34;
    private static final double ROOM = 0.12;

    private final ComparedPlans plans;
    private final BreakEvensAlone run;
    private final List<BreakEven> found;
    private final ChartTheme theme;

    /** A bar is as wide as the stretch, its colour says what costs less. */
    private final class Stretches extends StackedBarRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Paint getItemPaint(int row, int column) {
            List<Stretch> stretches = found.get(column).stretches();
            return row < stretches.size() ? colour(stretches.get(row).cheaper()) : theme.gridline();
        }
    }

    private BreakEvensAloneChart(ComparedPlans plans, BreakEvensAlone run, ChartTheme theme) {
        this.plans = plans;
        this.run = run;
        this.found = run.plans().get(plans.plan());
        this.theme = theme;
    }

    static Chart of(WhatIfResults results, int plan, ChartTheme theme) {
        if (results.breakEvens().alone().isEmpty()) {
            return ChartFrame.none(NAME, TITLE, "Not worked out yet", HEIGHT_AROUND + HEIGHT_PER_INPUT, theme);
        }
        BreakEvensAloneChart build = new BreakEvensAloneChart(new ComparedPlans(results, plan), results.breakEvens().alone().get(), theme);
        int height = HEIGHT_AROUND + HEIGHT_PER_INPUT * Math.max(3, build.found.size());
        if (build.found.isEmpty()) {
            return ChartFrame.none(NAME, TITLE, build.caption(), height, theme);
        }
        return new Chart(NAME, TITLE, build.chart(), build.sentences(), build.data(), height, ChartFrame.least(height), Subjects.NONE);
    }

    private JFreeChart chart() {
        DefaultCategoryDataset data = new DefaultCategoryDataset();
        int most = found.stream().mapToInt(f -> f.stretches().size()).max().orElse(0);
        for (int i = 0; i < found.size(); i++) {
            List<Stretch> stretches = found.get(i).stretches();
            for (int row = 0; row < most; row++) {
                double length = row < stretches.size() ? place(i, stretches.get(row).to()) - place(i, stretches.get(row).from()) : 0;
                data.addValue(length, (Integer) row, name(i));
            }
        }
        Stretches bars = new Stretches();
        bars.setBarPainter(new StandardBarPainter());
        bars.setShadowVisible(false);
        bars.setDefaultToolTipGenerator((d, row, column) -> name(column) + ": " + answer(column));
        NumberAxis range = new NumberAxis();
        range.setVisible(false);
        range.setRange(-ROOM, 1 + ROOM);
        CategoryPlot plot = new CategoryPlot(data, WaterfallBars.causeAxis(theme), range, bars);
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        ChartFrame.style(plot, theme);
        plot.setRangeGridlinesVisible(false);
        for (int i = 0; i < found.size(); i++) {
            label(plot, i);
        }
        plot.setFixedLegendItems(legend());
        return ChartFrame.around(plot, TITLE, caption(), theme);
    }

    private void label(CategoryPlot plot, int i) {
        List<Stretch> stretches = found.get(i).stretches();
        if (stretches.isEmpty()) {
            note(plot, i, "not allowed by the study", 0, TextAnchor.CENTER_LEFT);
            return;
        }
        note(plot, i, words(i, stretches.get(0).from()) + " ", 0, TextAnchor.CENTER_RIGHT);
        note(plot, i, " " + words(i, stretches.get(stretches.size() - 1).to()), 1, TextAnchor.CENTER_LEFT);
        for (Stretch stretch : stretches.subList(0, stretches.size() - 1)) {
            note(plot, i, "▏" + words(i, stretch.to()) + (stretch.jumps() ? " ↕" : ""), place(i, stretch.to()), TextAnchor.CENTER_LEFT);
        }
    }

    private void note(CategoryPlot plot, int i, String text, double at, TextAnchor anchor) {
        CategoryTextAnnotation note = new CategoryTextAnnotation(text, name(i), at);
        note.setTextAnchor(anchor);
        note.setFont(theme.tickFont());
        note.setPaint(at > 0 && at < 1 ? theme.text() : theme.quietText());
        plot.addAnnotation(note);
    }

    /** Where a value lies in the range of an input, 0 to 1. */
    private double place(int i, double value) {
        List<Stretch> stretches = found.get(i).stretches();
        double low = stretches.get(0).from();
        return (value - low) / (stretches.get(stretches.size() - 1).to() - low);
    }

    private Color colour(BreakEven.Cheaper cheaper) {
        return switch (cheaper) {
            case PLAN -> theme.passes(true);
            case OTHER -> theme.fails(true);
            case NEITHER -> theme.gridline();
        };
    }

    private LegendItemCollection legend() {
        LegendItemCollection legend = new LegendItemCollection();
        legend.add(ChartFrame.swatch("“" + plans.name() + "” costs less", theme.passes(true)));
        legend.add(ChartFrame.swatch("“" + plans.baselineName() + "” costs less", theme.fails(true)));
        return legend;
    }

    private String name(int i) {
        return plans.input(run.inputs().get(i));
    }

    private String words(int i, double value) {
        return plans.results().inputs().words(run.inputs().get(i), value);
    }

    private String answer(int i) {
        return found.get(i).stretches().isEmpty() ? "the study does not allow it to be varied so far"
                : found.get(i).words("“" + plans.name() + "”", "“" + plans.baselineName() + "”", v -> words(i, v));
    }

    private String caption() {
        if (found.isEmpty()) {
            return run.inputs().isEmpty() ? "No uncertain input takes the values of a range."
                    : "“" + plans.name() + "” is the baseline; choose another plan.";
        }
        long changes = found.stream().filter(f -> !f.values().isEmpty()).count();
        boolean jumps = found.stream().flatMap(f -> f.stretches().stream()).anyMatch(Stretch::jumps);
        return "Each input by itself, all others as they are: " + (changes == 0 ? "none" : changes) + " of " + found.size()
                + (changes > 1 ? " change within their ranges" : " changes within its range") + " which plan costs less; each value is evaluated"
                + (jumps ? "; ↕ the difference jumps there." : ".");
    }

    private String sentences() {
        List<String> all = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            all.add(name(i) + ": " + answer(i) + ".");
        }
        return caption() + " " + String.join(" ", all);
    }

    private ChartData data() {
        List<List<Object>> rows = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            int input = i;
            List<Stretch> all = found.get(i).stretches();
            rows.add(List.of(name(i), all.isEmpty() ? "" : words(i, all.get(0).from()), all.isEmpty() ? "" : words(i, all.get(all.size() - 1).to()),
                    all.size() < 2 ? "none" : all.subList(0, all.size() - 1).stream().map(s -> words(input, s.to()) + (s.jumps() ? " (jumps)" : ""))
                            .collect(Collectors.joining("; "))));
        }
        return new ChartData(List.of("Input", "From", "To", "Costs the same at"), rows);
    }
}
