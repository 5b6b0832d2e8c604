package org.amberyard.charts;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.variants.PriceFan;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.SortedDraws;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.TextAnchor;

/** Each price that varies over the years, as it is drawn: a fan for each, one below the other over the same years. */
final class PriceFansChart {
    private static final String NAME = "what_if_prices";
    private static final String TITLE = "Prices as drawn";
    private static final int HEIGHT = 300;
    private static final int HEIGHT_EACH = 120;
    private static final double LOW = 0.1;
    private static final double HIGH = 0.9;
    /** More would be too low to be read; the data holds all. */
    private static final int MOST = 6;
    private static final double WHOLE_NUMBERS = 100;
    private static final double TENTHS = 10;

    private final ComparedPlans plans;
    private final List<PriceFan> fans;
    private final ChartTheme theme;

    private PriceFansChart(ComparedPlans plans, UnitSystem units, ChartTheme theme) {
        this.plans = plans;
        this.fans = plans.results().prices().stream().map(fan -> fan.in(units, plans.currency())).toList();
        this.theme = theme;
    }

    static Chart of(WhatIfResults results, int plan, UnitSystem units, ChartTheme theme) {
        if (results.prices().isEmpty()) {
            return ChartFrame.none(NAME, TITLE, results.all().isEmpty() ? "Not worked out yet" : "No price varies", HEIGHT, theme);
        }
        PriceFansChart build = new PriceFansChart(new ComparedPlans(results, plan), units, theme);
        return new Chart(NAME, TITLE, build.chart(), build.caption(), build.data(), HEIGHT + HEIGHT_EACH * build.drawn().size(),
                ChartFrame.LEAST_HEIGHT, Subjects.NONE);
    }

    private List<PriceFan> drawn() {
        return fans.subList(0, Math.min(MOST, fans.size()));
    }

    private JFreeChart chart() {
        NumberAxis calendar = ChartFrame.valueAxis("Fiscal year", Figures.pattern("0"), theme);
        int years = plans.base().input().years();
        calendar.setTickUnit(new NumberTickUnit(years > 20 ? 5 : years > 10 ? 2 : 1));
        calendar.setAutoRangeIncludesZero(false);
        CombinedDomainXYPlot plot = new CombinedDomainXYPlot(calendar);
        drawn().forEach(fan -> plot.add(plot(fan)));
        plot.setFixedLegendItems(legend());
        return ChartFrame.around(plot, TITLE, subtitle(), theme);
    }

    private XYPlot plot(PriceFan fan) {
        NumberAxis axis = ChartFrame.valueAxis(null, Figures.pattern(pattern(fan)), theme);
        axis.setAutoRangeIncludesZero(false);
        XYPlot plot = new XYPlot(null, null, axis, null);
        ChartFrame.style(plot, theme);
        BandLines lines = new BandLines(theme);
        lines.add(fan.name(), IntStream.range(0, fan.years().size()).mapToObj(year -> {
            SortedDraws draws = fan.years().get(year);
            return new BandLines.Point(calendar(year), draws.quantile(0.5), draws.quantile(LOW), draws.quantile(HIGH));
        }).toList(), theme.text(), band(), true);
        lines.renderer().setDefaultToolTipGenerator((data, row, item) -> calendar(item) + ", " + fan.name() + ": "
                + range(fan, item) + " in eight draws out of ten");
        lines.addTo(plot);
        plot.addAnnotation(name(fan));
        return plot;
    }

    /** Names of things are longer than a low plot is high, so they stand inside, where the fan is not. */
    private XYTextAnnotation name(PriceFan fan) {
        double most = fan.years().stream().mapToDouble(y -> y.quantile(HIGH)).max().orElseThrow();
        int last = fan.years().size() - 1;
        boolean falls = fan.years().get(last).quantile(0.5) < fan.years().get(0).quantile(0.5);
        XYTextAnnotation name = new XYTextAnnotation(fan.name() + " (" + fan.unit() + ")", calendar(falls ? last : 0), most);
        name.setTextAnchor(falls ? TextAnchor.TOP_RIGHT : TextAnchor.TOP_LEFT);
        name.setFont(theme.tickFont());
        name.setPaint(theme.text());
        return name;
    }

    private Color band() {
        return theme.passes(true);
    }

    private static String pattern(PriceFan fan) {
        double most = fan.years().stream().mapToDouble(y -> Math.abs(y.quantile(HIGH))).max().orElse(0);
        return most >= WHOLE_NUMBERS ? "#,##0" : most >= TENTHS ? "0.0" : "0.00";
    }

    private int calendar(int year) {
        return plans.base().input().baseYear() + year;
    }

    private String range(PriceFan fan, int year) {
        SortedDraws draws = fan.years().get(year);
        return Figures.pattern(pattern(fan)).format(draws.quantile(LOW)) + " to "
                + Figures.pattern(pattern(fan)).format(draws.quantile(HIGH));
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        items.add(ChartFrame.line("half the draws stay below", theme.planStroke(0), theme.text()));
        items.add(ChartFrame.swatch("eight in ten", band()));
        return items;
    }

    /** Short, so that it leaves the room to the fans; {@link #caption} says the same with figures. */
    private String subtitle() {
        return "Constant money; by year, over the draws";
    }

    private String caption() {
        int last = plans.base().input().years() - 1;
        return "Constant money. In " + calendar(last) + " eight draws out of ten lie between these: " + drawn().stream()
                .map(fan -> fan.name() + " " + range(fan, last)).collect(Collectors.joining("; ")) + "."
                + (fans.size() > MOST ? " " + left(fans.size() - MOST) + " in the data alone." : "");
    }

    private static String left(int more) {
        return more == 1 ? "One more price is" : more + " more prices are";
    }

    private ChartData data() {
        List<List<Object>> rows = new ArrayList<>();
        for (PriceFan fan : fans) {
            for (int year = 0; year < fan.years().size(); year++) {
                SortedDraws draws = fan.years().get(year);
                rows.add(List.of(fan.name(), fan.unit(), calendar(year), draws.quantile(LOW), draws.quantile(0.5), draws.quantile(HIGH)));
            }
        }
        return new ChartData(List.of("Price", "Unit", "Fiscal year", "P10", "P50", "P90"), rows);
    }
}
