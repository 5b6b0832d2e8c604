package org.amberyard.charts;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.variants.AllTogether;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.Band;
import org.amberyard.core.whatif.SortedDraws;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.DefaultIntervalXYDataset;
import org.jfree.data.xy.DefaultXYDataset;

/** How the saving of a plan is spread over the draws: how many fall where, and how often a saving is exceeded. */
final class SavingDistributionChart {
    private static final String NAME = "what_if_distribution";
    private static final String TITLE = "All inputs together";
    private static final int HEIGHT = 440;
    private static final int MOST_BARS = 40;
    private static final int CURVE_STEPS = 200;
    private static final double CONFIDENCE = 0.95;
    private static final double[] SHARES = {0.1, 0.5, 0.9};

    private final ComparedPlans plans;
    private final AllTogether run;
    private final double[] savings;
    private final SortedDraws sorted;
    private final ChartTheme theme;

    private SavingDistributionChart(ComparedPlans plans, AllTogether run, ChartTheme theme) {
        this.plans = plans;
        this.run = run;
        this.savings = run.plans().difference(plans.baseline(), plans.plan());
        this.sorted = SortedDraws.of(savings);
        this.theme = theme;
    }

    static Chart of(WhatIfResults results, int plan, ChartTheme theme) {
        if (results.all().isEmpty()) {
            return ChartFrame.none(NAME, TITLE, "Not worked out yet", HEIGHT, theme);
        }
        SavingDistributionChart build = new SavingDistributionChart(new ComparedPlans(results, plan), results.all().get(), theme);
        return new Chart(NAME, TITLE, build.chart(), build.caption(), build.data(), HEIGHT, ChartFrame.LEAST_HEIGHT, Subjects.NONE);
    }

    private JFreeChart chart() {
        XYBarRenderer bars = new XYBarRenderer(0.06);
        bars.setBarPainter(new StandardXYBarPainter());
        bars.setShadowVisible(false);
        bars.setSeriesPaint(0, theme.passes(true));
        bars.setDefaultToolTipGenerator((data, row, item) -> Figures.whole(data.getYValue(row, item)) + " draws around "
                + plans.money(data.getXValue(row, item)));
        XYPlot plot = new XYPlot(bars(), savingAxis(), ChartFrame.valueAxis("Draws", Figures.pattern("#,##0"), theme), bars);
        ChartFrame.style(plot, theme);
        NumberAxis share = ChartFrame.valueAxis("Draws that save more", Figures.pattern("0 %"), theme);
        share.setRange(0, 1);
        plot.setRangeAxis(1, share);
        plot.setRangeAxisLocation(1, AxisLocation.BOTTOM_OR_RIGHT);
        plot.setDataset(1, curve());
        XYLineAndShapeRenderer line = new XYLineAndShapeRenderer(true, false);
        line.setSeriesPaint(0, theme.plan(2));
        line.setSeriesStroke(0, theme.planStroke(0));
        plot.setRenderer(1, line);
        plot.mapDatasetToRangeAxis(1, 1);
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        for (double of : SHARES) {
            plot.addDomainMarker(marker(of));
        }
        plot.setFixedLegendItems(legend());
        return ChartFrame.around(plot, TITLE, caption(), theme);
    }

    private ValueMarker marker(double share) {
        ValueMarker marker = new ValueMarker(sorted.quantile(share), theme.quietText(), ChartFrame.THIN);
        marker.setLabel(" P" + Math.round(100 * share));
        marker.setLabelFont(theme.tickFont());
        marker.setLabelPaint(theme.text());
        marker.setLabelBackgroundColor(theme.background());
        marker.setLabelAnchor(RectangleAnchor.TOP_RIGHT);
        marker.setLabelTextAnchor(TextAnchor.TOP_LEFT);
        return marker;
    }

    private int count() {
        return Math.max(5, Math.min(MOST_BARS, (int) Math.sqrt(savings.length)));
    }

    private double width() {
        return Math.max(1e-6, (sorted.quantile(1) - sorted.quantile(0)) / count());
    }

    private int[] counts() {
        int[] counts = new int[count()];
        double least = sorted.quantile(0);
        Arrays.stream(savings).forEach(s -> counts[Math.min(counts.length - 1, (int) ((s - least) / width()))]++);
        return counts;
    }

    private DefaultIntervalXYDataset bars() {
        int[] counts = counts();
        double[] from = IntStream.range(0, counts.length).mapToDouble(i -> sorted.quantile(0) + i * width()).toArray();
        double[] middle = Arrays.stream(from).map(f -> f + width() / 2).toArray();
        double[] to = Arrays.stream(from).map(f -> f + width()).toArray();
        double[] height = Arrays.stream(counts).asDoubleStream().toArray();
        DefaultIntervalXYDataset data = new DefaultIntervalXYDataset();
        data.addSeries("Draws", new double[][] {middle, from, to, height, height, height});
        return data;
    }

    private DefaultXYDataset curve() {
        List<SortedDraws.Exceedance> curve = sorted.exceedance(Math.min(CURVE_STEPS, savings.length));
        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries("Exceeded", new double[][] {curve.stream().mapToDouble(SortedDraws.Exceedance::value).toArray(),
            curve.stream().mapToDouble(SortedDraws.Exceedance::exceeded).toArray()});
        return data;
    }

    private NumberAxis savingAxis() {
        double reach = Math.max(Math.abs(sorted.quantile(0)), Math.abs(sorted.quantile(1)));
        NumberAxis axis = ChartFrame.valueAxis(plans.savingLabel(), MoneyTickFormat.reaching(reach), theme);
        axis.setAutoRangeIncludesZero(false);
        return axis;
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        items.add(ChartFrame.swatch("draws", theme.passes(true)));
        items.add(ChartFrame.line("share of draws that save more", theme.planStroke(0), theme.plan(2)));
        return items;
    }

    private String caption() {
        Band cheaper = run.plans().cheaper(plans.plan(), plans.baseline()).band(CONFIDENCE);
        return "“" + plans.name() + "” costs less than “" + plans.baselineName() + "” in " + Figures.percent(cheaper.value()) + " of "
                + plans.draws(savings.length) + " (likely " + Figures.percent(cheaper.low()) + " to "
                + Figures.percent(cheaper.high()) + "). Half the draws " + median() + "; eight in ten lie between "
                + difference(sorted.quantile(0.1)) + " and " + difference(sorted.quantile(0.9)) + "."
                + plans.fitted(run.missed().savings().get(plans.plan()));
    }

    private String median() {
        double amount = sorted.quantile(0.5);
        return amount < 0 ? "cost at least " + plans.money(-amount) + " more" : "save " + plans.money(amount) + " or more";
    }

    /** A saving, as what is paid less or more. */
    private String difference(double saving) {
        return plans.money(Math.abs(saving)) + (saving < 0 ? " more" : " less");
    }

    private ChartData data() {
        int[] counts = counts();
        String money = " (" + plans.currency() + ")";
        return new ChartData(List.of("Saving from" + money, "Saving to" + money, "Draws", "Draws that save more than the first (%)"),
                IntStream.range(0, counts.length).mapToObj(i -> {
                    double from = sorted.quantile(0) + i * width();
                    return List.<Object>of(from, from + width(), counts[i], 100 * sorted.exceeded(from));
                }).toList());
    }
}
