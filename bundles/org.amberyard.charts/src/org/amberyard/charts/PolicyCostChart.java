package org.amberyard.charts;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.yard.YardInput;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.labels.ItemLabelAnchor;
import org.jfree.chart.labels.ItemLabelPosition;
import org.jfree.chart.labels.StandardCategoryItemLabelGenerator;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.category.DefaultCategoryDataset;

/** Electric bills of a year under each charging policy, by what they follow. */
public final class PolicyCostChart {
    private static final String NAME = "charging_policies";
    private static final String TITLE = "Charging policies compared";
    private static final int HEIGHT = 350;
    private static final int LEAST = 250;
    private static final double ROOM_FOR_LABELS = 0.8;
    private static final int MOST_NAMED = 6;
    private static final List<String> PARTS = List.of("Energy", "Demand", "Fixed");

    private final StudyResult result;
    private final int plan;
    private final int year;
    private final YardInput yard;
    private final List<PolicyCosts.Cost> costs;
    private final ChartTheme theme;

    private PolicyCostChart(StudyResult result, int plan, int year, ChartTheme theme) {
        this.result = result;
        this.plan = plan;
        this.year = year;
        this.yard = YardDay.yard(result, plan, year).input();
        this.costs = PolicyCosts.of(result.plans().get(plan), year);
        this.theme = theme;
    }

    /** The chart of a plan's year; it says so where no bus is electric. Money has no unit system. */
    public static Chart of(StudyResult result, int plan, int year, UnitSystem system, ChartTheme theme) {
        if (YardDay.yard(result, plan, year).input().buses().isEmpty()) {
            return ChartFrame.none(NAME, TITLE, YardDay.withoutBuses(result, plan, year), HEIGHT, theme);
        }
        PolicyCostChart build = new PolicyCostChart(result, plan, year, theme);
        Subject behind = new Subject(Subject.Kind.PLAN, plan);
        return new Chart(NAME, TITLE, build.chart(), build.sentences(Integer.MAX_VALUE - 1), build.data(), HEIGHT,
                LEAST, entity -> Optional.of(behind));
    }

    private JFreeChart chart() {
        StackedBarRenderer bars = new StackedBarRenderer();
        bars.setBarPainter(new StandardBarPainter());
        bars.setShadowVisible(false);
        LegendItemCollection legend = new LegendItemCollection();
        for (int part = 0; part < PARTS.size(); part++) {
            bars.setSeriesPaint(part, theme.plan(part + 1));
            legend.add(ChartFrame.swatch(PARTS.get(part), theme.plan(part + 1)));
        }
        bars.setDefaultToolTipGenerator((data, row, column) -> costs.get(column).policy().label() + ", " + data.getRowKey(row)
                + ": " + Figures.exactMoney(currency(), data.getValue(row, column).doubleValue()));
        int last = PARTS.size() - 1;
        bars.setSeriesItemLabelsVisible(last, true);
        bars.setSeriesItemLabelFont(last, theme.tickFont());
        bars.setSeriesItemLabelPaint(last, theme.text());
        bars.setSeriesItemLabelGenerator(last, new StandardCategoryItemLabelGenerator() {
            private static final long serialVersionUID = 1L;

            @Override
            public String generateLabel(CategoryDataset data, int row, int column) {
                return label(costs.get(column));
            }
        });
        bars.setSeriesPositiveItemLabelPosition(last, new ItemLabelPosition(ItemLabelAnchor.OUTSIDE3, TextAnchor.CENTER_LEFT));
        CategoryPlot plot = new CategoryPlot(dataset(), WaterfallBars.causeAxis(theme), moneyAxis(), bars);
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
        ChartFrame.style(plot, theme);
        plot.setFixedLegendItems(legend);
        return ChartFrame.around(plot, TITLE, sentences(MOST_NAMED), theme);
    }

    private String currency() {
        return result.input().currency();
    }

    private DefaultCategoryDataset dataset() {
        DefaultCategoryDataset dataset = new DefaultCategoryDataset();
        for (PolicyCosts.Cost cost : costs) {
            dataset.addValue(cost.parts().energy(), PARTS.get(0), cost.policy().label());
            dataset.addValue(cost.parts().demand(), PARTS.get(1), cost.policy().label());
            dataset.addValue(cost.parts().fixed(), PARTS.get(2), cost.policy().label());
        }
        return dataset;
    }

    /** Money, peak and short buses: what the bar alone does not say. */
    private String label(PolicyCosts.Cost cost) {
        return " " + Figures.exactMoney(currency(), cost.parts().total()) + ", " + Figures.whole(cost.peakKw()) + " kW, "
                + (cost.shortBuses().isEmpty() ? "all ready" : cost.shortBuses().size() + " short");
    }

    private NumberAxis moneyAxis() {
        double largest = costs.stream().mapToDouble(c -> c.parts().total()).max().orElseThrow();
        NumberAxis axis = ChartFrame.valueAxis("Bills of the year (" + currency() + ", at today's tariff)",
                MoneyTickFormat.reaching(largest), theme);
        axis.setUpperMargin(ROOM_FOR_LABELS);
        return axis;
    }

    private PolicyCosts.Cost of(ChargePolicy policy) {
        return costs.stream().filter(c -> c.policy() == policy).findFirst().orElseThrow();
    }

    private String sentences(int mostNamed) {
        PolicyCosts.Cost used = of(yard.rule().policy());
        PolicyCosts.Cost lowest = costs.stream()
                .min(Comparator.<PolicyCosts.Cost>comparingDouble(PolicyCosts.Cost::missingKwh)
                        .thenComparingDouble(c -> c.parts().total()))
                .orElseThrow();
        String head = "Plan “" + result.plans().get(plan).name() + "”, " + (result.input().baseYear() + year) + ", tariff "
                + yard.metering().tariff().name() + ": the policy in use, " + used.policy().label() + ", costs "
                + Figures.exactMoney(currency(), used.parts().total()) + " a year";
        String other = lowest.policy() == used.policy() ? "; no other that has the buses as ready costs less."
                : "; " + lowest.policy().label() + " would cost " + Figures.exactMoney(currency(), lowest.parts().total()) + ".";
        double foresight = of(ChargePolicy.DAY_BY_DAY).parts().total() - of(ChargePolicy.LEAST_COST).parts().total();
        String worth = " A controller that knows one day at a time would pay " + Figures.exactMoney(currency(), foresight)
                + " more than least cost: what foresight is worth.";
        String shorts = costs.stream().filter(c -> !c.shortBuses().isEmpty()).map(c -> shorts(c, mostNamed))
                .collect(Collectors.joining());
        return head + other + worth + (shorts.isEmpty() ? " All buses leave ready under each policy." : shorts);
    }

    private static String shorts(PolicyCosts.Cost cost, int mostNamed) {
        String when = cost.policy() == ChargePolicy.AT_ONCE ? "even when charged at once"
                : "when charged " + cost.policy().label();
        return " Short " + when + ": " + DayLoadText.listed(cost.shortBuses(), mostNamed) + " ("
                + Figures.whole(cost.missingKwh()) + " kWh a year).";
    }

    private ChartData data() {
        List<List<Object>> rows = costs.stream().map(c -> List.<Object>of(c.policy().label(), c.parts().energy(),
                c.parts().demand(), c.parts().fixed(), c.parts().total(), c.peakKw(), c.shortBuses().size(), c.missingKwh(),
                String.join(", ", c.shortBuses()))).toList();
        return new ChartData(List.of("Policy", "Energy (" + currency() + ")", "Demand (" + currency() + ")",
                "Fixed (" + currency() + ")", "Total (" + currency() + ")", "Peak (kW)", "Short buses", "Missing energy (kWh)",
                "Which"), rows);
    }
}
