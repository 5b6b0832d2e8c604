package org.amberyard.charts;

import java.awt.BasicStroke;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.upkeep.ShopCalendar;
import org.amberyard.core.upkeep.ShopLoad;
import org.amberyard.core.upkeep.Skill;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.CategoryLabelPositions;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.DefaultCategoryDataset;

/** Labour of the shop by year and skill in a plan. */
public final class ShopHoursChart {
    private static final String NAME = "shop_hours";
    private static final String TITLE = "Shop hours by year";
    private static final int HEIGHT = 420;
    private static final int LEAST_HEIGHT = 270;
    /** Room for the words above the line of what the shop can give, also in a low chart. */
    private static final double HEADROOM = 1.25;

    private final StudyResult result;
    private final PlanResult plan;
    private final ChartTheme theme;
    private final List<ShopCalendar> shops;
    private final List<Map<Skill, Double>> labourHours;

    private ShopHoursChart(StudyResult result, PlanResult plan, ChartTheme theme) {
        this.result = result;
        this.plan = plan;
        this.theme = theme;
        this.shops = IntStream.range(0, result.input().years()).mapToObj(plan::shop).toList();
        this.labourHours = shops.stream().map(ShopCalendar::labourHours).toList();
    }

    /** The chart of a plan by its place; it says so where no task applies. Hours have no unit system. */
    public static Chart of(StudyResult result, int plan, UnitSystem system, ChartTheme theme) {
        ShopHoursChart build = new ShopHoursChart(result, result.plans().get(plan), theme);
        String words = build.words();
        JFreeChart chart = build.total(0, result.input().years()) > 0 ? build.chart(words)
                : ChartFrame.without(TITLE, words, theme);
        return new Chart(NAME, TITLE, chart, words, build.data(), HEIGHT, LEAST_HEIGHT, Subjects.NONE);
    }

    private JFreeChart chart(String words) {
        StackedBarRenderer bars = new StackedBarRenderer();
        bars.setBarPainter(new StandardBarPainter());
        bars.setShadowVisible(false);
        LegendItemCollection legend = new LegendItemCollection();
        for (Skill skill : Skill.values()) {
            bars.setSeriesPaint(skill.ordinal(), theme.plan(skill.ordinal()));
            if (IntStream.range(0, result.input().years()).anyMatch(y -> hours(y, skill) > 0)) {
                legend.add(ChartFrame.swatch(skill.word(), theme.plan(skill.ordinal())));
            }
        }
        bars.setDefaultToolTipGenerator((data, row, column) -> data.getRowKey(row) + ", " + data.getColumnKey(column) + ": "
                + Math.round(data.getValue(row, column).doubleValue()) + " h");
        CategoryAxis years = new BarAxis();
        ChartFrame.style(years, theme);
        years.setCategoryLabelPositions(CategoryLabelPositions.STANDARD);
        CategoryPlot plot = new CategoryPlot(dataset(), years,
                ChartFrame.valueAxis("Labour (h)", Figures.pattern("#,##0"), theme), bars);
        ChartFrame.style(plot, theme);
        plot.setFixedLegendItems(legend);
        addCapacity(plot);
        return ChartFrame.around(plot, TITLE, words, theme);
    }

    private void addCapacity(CategoryPlot plot) {
        double capacity = result.input().rules().upkeep().shopHours();
        if (capacity > 0) {
            ValueMarker line = new ValueMarker(capacity, theme.text(), new BasicStroke(1.5f));
            line.setLabel("what the shop can give");
            line.setLabelFont(theme.tickFont());
            line.setLabelPaint(theme.text());
            line.setLabelBackgroundColor(theme.background());
            line.setLabelAnchor(RectangleAnchor.TOP_RIGHT);
            line.setLabelTextAnchor(TextAnchor.BOTTOM_RIGHT);
            plot.addRangeMarker(line);
            double top = IntStream.range(0, result.input().years()).mapToDouble(y -> total(y, y + 1)).max().orElse(0);
            plot.getRangeAxis().setUpperBound(HEADROOM * Math.max(top, capacity));
        }
    }

    private DefaultCategoryDataset dataset() {
        DefaultCategoryDataset dataset = new DefaultCategoryDataset();
        for (Skill skill : Skill.values()) {
            for (int year = 0; year < result.input().years(); year++) {
                Integer calendar = result.input().baseYear() + year;
                dataset.addValue(hours(year, skill), skill.word(), calendar);
            }
        }
        return dataset;
    }

    private double hours(int year, Skill skill) {
        return labourHours.get(year).getOrDefault(skill, 0.0);
    }

    private double total(int from, int to) {
        double sum = 0;
        for (int year = from; year < to; year++) {
            for (Skill skill : Skill.values()) {
                sum += hours(year, skill);
            }
        }
        return sum;
    }

    private String words() {
        int years = result.input().years();
        if (total(0, years) == 0) {
            return "No task of the shop applies to a bus of " + plan.name() + "; tasks are entered on the page Upkeep.";
        }
        int most = IntStream.range(0, years).boxed().max(Comparator.comparingInt(this::people)).orElseThrow();
        String people = people(most) == 0 ? " No work on high voltage." : " " + people(most)
                + " people trained for high voltage are needed from " + (result.input().baseYear() + firstHighVoltage())
                + " on (" + Math.round(hours(years - 1, Skill.HIGH_VOLTAGE)) + " h in the last year).";
        return plan.name() + ": " + load(0) + ", " + load(years - 1) + "."
                + when("Overloaded", ShopLoad.Verdict.OVERLOADED) + when("Partly idle", ShopLoad.Verdict.IDLE) + people;
    }

    private ShopLoad of(int year) {
        return ShopLoad.of(shops.get(year), result.input().rules().upkeep().shopHours());
    }

    private String load(int year) {
        ShopLoad load = of(year);
        String hours = Figures.pattern("#,##0").format(load.hours()) + " h of shop labour in "
                + (result.input().baseYear() + year);
        return load.verdict() == ShopLoad.Verdict.UNKNOWN ? hours
                : hours + " (" + Math.round(100 * load.share()) + " % of capacity, " + load.verdict().word() + ")";
    }

    private String when(String how, ShopLoad.Verdict verdict) {
        List<String> years = IntStream.range(0, result.input().years())
                .filter(y -> of(y).verdict() == verdict)
                .mapToObj(y -> String.valueOf(result.input().baseYear() + y)).toList();
        return years.isEmpty() ? "" : " " + how + " in " + String.join(", ", years) + ".";
    }

    private int people(int year) {
        return shops.get(year).highVoltagePeople(result.input().rules().upkeep().highVoltageHours());
    }

    private int firstHighVoltage() {
        return IntStream.range(0, result.input().years()).filter(y -> people(y) > 0).findFirst().orElseThrow();
    }

    private ChartData data() {
        List<String> columns = new ArrayList<>(List.of("Year"));
        for (Skill skill : Skill.values()) {
            columns.add(skill.word() + " (h)");
        }
        List<List<Object>> rows = new ArrayList<>();
        for (int year = 0; year < result.input().years(); year++) {
            List<Object> row = new ArrayList<>(List.of(result.input().baseYear() + year));
            for (Skill skill : Skill.values()) {
                row.add(hours(year, skill));
            }
            rows.add(row);
        }
        return new ChartData(columns, rows);
    }
}
