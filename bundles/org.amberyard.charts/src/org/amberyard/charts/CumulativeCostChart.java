package org.amberyard.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.amberyard.core.money.Payback;
import org.amberyard.core.plan.Comparison;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Cumulative cost of each plan over time, with the point at which each compared plan has paid back. */
public final class CumulativeCostChart {
    private static final String TITLE = "Cumulative cost and payback";
    private static final int HEIGHT = 440;
    private static final int YEARS_WITH_ALL_TICKS = 16;

    private final StudyResult result;
    private final ChartTheme theme;
    private final List<CumulativeCost> costs;

    private CumulativeCostChart(StudyResult result, ChartTheme theme) {
        this.result = result;
        this.theme = theme;
        this.costs = result.plans().stream().map(p -> new CumulativeCost(p.ledger())).toList();
    }

    /** The chart of a result. Money has no unit system; the argument keeps all charts alike. */
    public static Chart of(StudyResult result, UnitSystem system, ChartTheme theme) {
        CumulativeCostChart build = new CumulativeCostChart(result, theme);
        return new Chart("cumulative_cost", TITLE, build.chart(), build.sentences(), build.data(), HEIGHT,
                ChartFrame.LEAST_HEIGHT, Subjects.NONE);
    }

    private JFreeChart chart() {
        XYPlot plot = new XYPlot(dataset(), timeAxis(), moneyAxis(), renderer());
        ChartFrame.style(plot, theme);
        PaybackMarks marks = new PaybackMarks(result.input(), theme);
        for (Comparison comparison : result.comparisons()) {
            marks.add(plot, comparison, result.plans().get(comparison.plan()).name(), costs.get(comparison.plan()));
        }
        String subtitle = "In " + StatedMoney.of(result.input())
                + ", not discounted; what buses and chargers are still worth at the end is left out";
        String paybacks = result.comparisons().stream().map(this::words).collect(Collectors.joining(";  "));
        return ChartFrame.around(plot, TITLE, paybacks.isEmpty() ? subtitle : subtitle + "\n" + paybacks, theme);
    }

    private String words(Comparison comparison) {
        return name(comparison) + " " + payback(comparison);
    }

    private String name(Comparison comparison) {
        return "“" + result.plans().get(comparison.plan()).name() + "”";
    }

    private String payback(Comparison comparison) {
        return PaybackWords.of(comparison.simple(), result.input());
    }

    private int lastYear() {
        return result.input().baseYear() + result.input().years() - 1;
    }

    private XYSeriesCollection dataset() {
        XYSeriesCollection dataset = new XYSeriesCollection();
        for (int plan = 0; plan < costs.size(); plan++) {
            XYSeries series = new XYSeries(new LineKey(plan, result.plans().get(plan).name()), false, true);
            CumulativeCost cost = costs.get(plan);
            for (int point = 0; point < cost.points(); point++) {
                series.add(result.input().baseYear() + cost.time(point), cost.sum(point));
            }
            dataset.addSeries(series);
        }
        return dataset;
    }

    private NumberAxis timeAxis() {
        int first = result.input().baseYear();
        int years = result.input().years();
        NumberAxis axis = new YearTimeAxis("Start of year");
        ChartFrame.style(axis, theme);
        axis.setNumberFormatOverride(Figures.pattern("0"));
        axis.setTickUnit(new NumberTickUnit(years <= YEARS_WITH_ALL_TICKS ? 1 : Math.ceil(years / 10.0)));
        axis.setRange(first - 0.01 * years, first + years + 0.02 * years);
        axis.setAutoRangeIncludesZero(false);
        return axis;
    }

    private NumberAxis moneyAxis() {
        double largest = costs.stream().mapToDouble(CumulativeCost::last).map(Math::abs).max().orElse(0);
        NumberAxis axis = ChartFrame.valueAxis("Cumulative cost (" + result.input().currency() + ")",
                MoneyTickFormat.reaching(largest), theme);
        axis.setUpperMargin(0.04);
        return axis;
    }

    private XYLineAndShapeRenderer renderer() {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setLegendLine(ChartFrame.LINE);
        renderer.setDefaultToolTipGenerator((data, plan, point) -> data.getSeriesKey(plan) + ", "
                + Figures.years(data.getXValue(plan, point) - result.input().baseYear()) + " after the start: "
                + Figures.exactMoney(result.input().currency(), data.getYValue(plan, point)));
        for (int plan = 0; plan < costs.size(); plan++) {
            renderer.setSeriesPaint(plan, theme.plan(plan));
            renderer.setSeriesStroke(plan, theme.planStroke(plan));
        }
        return renderer;
    }

    private String sentences() {
        StringBuilder text = new StringBuilder("Cumulative cost from " + result.input().baseYear() + " to the end of "
                + lastYear() + " in " + StatedMoney.of(result.input()) + ", not discounted, without what is left.");
        for (int plan = 0; plan < costs.size(); plan++) {
            text.append(' ').append(result.plans().get(plan).name()).append(": ")
                    .append(Figures.money(result.input().currency(), costs.get(plan).last())).append('.');
        }
        for (Comparison comparison : result.comparisons()) {
            text.append(' ').append(words(comparison));
            text.append(comparison.simple().outcome() == Payback.Outcome.AFTER ? " against “" + result.baseline().name()
                    + "”." : ".");
        }
        return text.toString();
    }

    private ChartData data() {
        List<List<Object>> rows = new ArrayList<>();
        for (int plan = 0; plan < costs.size(); plan++) {
            PlanResult named = result.plans().get(plan);
            for (int point = 0; point < costs.get(plan).points(); point++) {
                rows.add(List.of(named.name(), costs.get(plan).time(point), costs.get(plan).sum(point)));
            }
        }
        return new ChartData(List.of("Plan", "Time after the start of " + result.input().baseYear() + " (yr)",
                "Cumulative cost (" + result.input().currency() + ")"), rows);
    }
}
