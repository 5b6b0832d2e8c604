package org.amberyard.charts;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.variants.VarianceShares;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.Band;
import org.amberyard.core.whatif.SobolIndices;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.renderer.category.StatisticalBarRenderer;
import org.jfree.data.statistics.DefaultStatisticalCategoryDataset;

/** What each uncertain input explains of the variance of a plan's saving, by itself and with others, with 95 % intervals. */
final class VarianceSharesChart {
    private static final String NAME = "what_if_shares";
    private static final String TITLE = "What decides the saving";
    private static final int HEIGHT_AROUND = 150;
    private static final int HEIGHT_PER_INPUT = 36;

    private final ComparedPlans plans;
    private final VarianceShares run;
    private final SobolIndices shares;
    private final List<Integer> order;
    private final ChartTheme theme;

    private VarianceSharesChart(ComparedPlans plans, VarianceShares run, ChartTheme theme) {
        this.plans = plans;
        this.run = run;
        this.shares = run.ofSaving(plans.plan());
        this.order = IntStream.range(0, run.groups().size()).boxed()
                .sorted(Comparator.comparingDouble((Integer g) -> -shares.total().get(g).value())).toList();
        this.theme = theme;
    }

    static Chart of(WhatIfResults results, int plan, ChartTheme theme) {
        if (results.shares().isEmpty()) {
            return ChartFrame.none(NAME, TITLE, "Not worked out yet", 260, theme);
        }
        VarianceSharesChart build = new VarianceSharesChart(new ComparedPlans(results, plan), results.shares().get(), theme);
        int height = HEIGHT_AROUND + HEIGHT_PER_INPUT * Math.max(3, build.order.size());
        return new Chart(NAME, TITLE, build.chart(), build.caption(), build.data(), height, ChartFrame.least(height), Subjects.NONE);
    }

    private JFreeChart chart() {
        DefaultStatisticalCategoryDataset data = new DefaultStatisticalCategoryDataset();
        for (int group : order) {
            add(data, shares.first().get(group), "by itself", group);
            add(data, shares.total().get(group), "with others", group);
        }
        StatisticalBarRenderer bars = new StatisticalBarRenderer();
        bars.setBarPainter(new StandardBarPainter());
        bars.setShadowVisible(false);
        bars.setItemMargin(0.05);
        bars.setErrorIndicatorPaint(theme.quietText());
        bars.setSeriesPaint(0, theme.passes(false));
        bars.setSeriesPaint(1, theme.passes(true));
        bars.setDefaultToolTipGenerator((d, row, column) -> tip(order.get(column), row));
        NumberAxis axis = ChartFrame.valueAxis("Share of the variance of the saving", Figures.pattern("0 %"), theme);
        axis.setRange(0, 1.05 * Math.min(1, Math.max(0.2, order.stream().mapToDouble(g -> shares.total().get(g).high()).max().orElse(1))));
        CategoryPlot plot = new CategoryPlot(data, WaterfallBars.causeAxis(theme), axis, bars);
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
        ChartFrame.style(plot, theme);
        LegendItemCollection legend = new LegendItemCollection();
        legend.add(ChartFrame.swatch("by itself (upper bar)", theme.passes(false)));
        legend.add(ChartFrame.swatch("by itself and with others (lower bar)", theme.passes(true)));
        legend.add(ChartFrame.line("95 % interval, " + run.intervals(), ChartFrame.THIN, theme.quietText()));
        plot.setFixedLegendItems(legend);
        return ChartFrame.around(plot, TITLE, caption(), theme);
    }

    /** Whiskers are as long to both sides; what the interval reaches at most. */
    private void add(DefaultStatisticalCategoryDataset data, Band band, String row, int group) {
        data.add(Math.max(0, band.value()), Math.max(band.high() - band.value(), band.value() - band.low()), row, run.groups().get(group));
    }

    private String tip(int group, int row) {
        Band band = (row == 0 ? shares.first() : shares.total()).get(group);
        return run.groups().get(group) + (row == 0 ? " by itself: " : " with others: ") + Figures.percent(Math.max(0, band.value()))
                + " (likely " + Figures.percent(Math.max(0, band.low())) + " to " + Figures.percent(Math.max(0, band.high())) + ")";
    }

    private String caption() {
        String fitted = plans.fitted(run.missed().savings().get(plans.plan()));
        List<Integer> named = VarianceShares.deciding(shares);
        if (named.isEmpty()) {
            return "No single input explains a twentieth of the variance of the saving of “" + plans.name() + "”." + fitted;
        }
        return run.explained(shares) + " of the saving of “" + plans.name() + "”: " + named.stream().map(this::explained)
                .collect(Collectors.joining(", ")) + "." + fitted;
    }

    private String explained(int group) {
        Band band = shares.first().get(group);
        return run.groups().get(group) + " about " + Figures.wholePercent(share(band.value())) + " by itself (likely "
                + Figures.wholePercent(share(band.low())) + " to " + Figures.wholePercent(share(band.high())) + ")";
    }

    private static double share(double estimate) {
        return Math.min(1, Math.max(0, estimate));
    }

    private ChartData data() {
        return new ChartData(List.of("Input", "By itself (%)", "From (%)", "To (%)", "With others (%)", "From (%)", "To (%)"),
                order.stream().map(g -> {
                    Band first = shares.first().get(g);
                    Band total = shares.total().get(g);
                    return List.<Object>of(run.groups().get(g), 100 * first.value(), 100 * first.low(), 100 * first.high(),
                            100 * total.value(), 100 * total.low(), 100 * total.high());
                }).toList());
    }
}
