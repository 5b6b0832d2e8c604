package org.amberyard.charts;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.whatif.SortedDraws;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.XYPlot;

/** Draws year by year as a fan: a line that half of them stay below, a band that holds half and one that holds nine in ten. */
final class DrawFan {
    /** Percentiles of the fan, in the order of its columns as data. */
    private static final int[] PERCENTILES = {5, 25, 50, 75, 95};
    private static final double[][] BANDS = {{0.05, 0.95}, {0.25, 0.75}};
    private static final double DARKER = 0.6;

    private final ComparedPlans plans;
    private final List<SortedDraws> years;
    private final ChartTheme theme;

    DrawFan(ComparedPlans plans, List<SortedDraws> years, ChartTheme theme) {
        this.plans = plans;
        this.years = years;
        this.theme = theme;
    }

    /** A plot of the fan over fiscal years. */
    XYPlot plot(String label) {
        double most = years.stream().mapToDouble(y -> Math.max(Math.abs(y.quantile(BANDS[0][0])), Math.abs(y.quantile(BANDS[0][1])))).max()
                .orElseThrow();
        NumberAxis calendar = ChartFrame.valueAxis("Fiscal year", Figures.pattern("0"), theme);
        calendar.setTickUnit(new NumberTickUnit(years.size() > 20 ? 5 : years.size() > 10 ? 2 : 1));
        calendar.setAutoRangeIncludesZero(false);
        XYPlot plot = new XYPlot(null, calendar, ChartFrame.valueAxis(label, MoneyTickFormat.reaching(most), theme), null);
        ChartFrame.style(plot, theme);
        BandLines fan = new BandLines(theme);
        fan.add("nine in ten", points(BANDS[0]), theme.plan(1), theme.passes(true), false);
        fan.add("half", points(BANDS[1]), theme.text(), darker(), true);
        fan.renderer().setDefaultToolTipGenerator((data, row, item) -> tip(item));
        fan.addTo(plot);
        return plot;
    }

    private List<BandLines.Point> points(double[] band) {
        return IntStream.range(0, years.size()).mapToObj(year -> new BandLines.Point(calendar(year), years.get(year).quantile(0.5),
                years.get(year).quantile(band[0]), years.get(year).quantile(band[1]))).toList();
    }

    private Color darker() {
        return ChartTheme.between(theme.passes(true), theme.passes(false), DARKER);
    }

    /** Calendar year of a year of the study. */
    int calendar(int year) {
        return plans.base().input().baseYear() + year;
    }

    LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        items.add(ChartFrame.line("half the draws stay below", theme.planStroke(0), theme.text()));
        items.add(ChartFrame.swatch("half of the draws", darker()));
        items.add(ChartFrame.swatch("nine in ten", theme.passes(true)));
        return items;
    }

    private String tip(int year) {
        return calendar(year) + ": " + plans.money(years.get(year).quantile(BANDS[0][0])) + " to "
                + plans.money(years.get(year).quantile(BANDS[0][1])) + " in nine draws out of ten";
    }

    /** Headers of the fan as data. */
    List<String> headers() {
        List<String> headers = new ArrayList<>(List.of("Fiscal year"));
        IntStream.of(PERCENTILES).forEach(p -> headers.add("P" + p + " (" + plans.currency() + ")"));
        return headers;
    }

    /** A year of the fan as data. */
    List<Object> row(int year) {
        List<Object> row = new ArrayList<>(List.of(calendar(year)));
        IntStream.of(PERCENTILES).forEach(p -> row.add(years.get(year).quantile(p / 100.0)));
        return row;
    }
}
