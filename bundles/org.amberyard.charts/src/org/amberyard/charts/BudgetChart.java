package org.amberyard.charts;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.amberyard.core.plan.BudgetYear;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.renderer.category.LevelRenderer;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.data.category.DefaultCategoryDataset;

/** What must be appropriated for a plan in each fiscal year, in money of the year, against the cap where there is one. */
public final class BudgetChart {
    private static final String NAME = "budget_by_year";
    private static final String TITLE = "Budget by fiscal year";
    private static final List<String> PARTS = List.of("Purchases", "Running costs", "Debt service and taxes",
            "Funding, sales and borrowing");
    private static final int HEIGHT = 440;
    private static final BasicStroke LEVEL = new BasicStroke(2.4f);

    private final StudyResult result;
    private final int plan;
    private final List<BudgetYear> years;
    private final ChartTheme theme;

    private BudgetChart(StudyResult result, int plan, ChartTheme theme) {
        this.result = result;
        this.plan = plan;
        this.years = result.plans().get(plan).finance().budget();
        this.theme = theme;
    }

    /** The chart of a plan by its place. Money has no unit system. */
    public static Chart of(StudyResult result, int plan, UnitSystem system, ChartTheme theme) {
        BudgetChart build = new BudgetChart(result, plan, theme);
        Subject behind = new Subject(Subject.Kind.PLAN, plan);
        return new Chart(NAME, TITLE, build.chart(), build.sentences(), build.data(), HEIGHT, ChartFrame.LEAST_HEIGHT,
                entity -> Optional.of(behind));
    }

    private String currency() {
        return result.input().currency();
    }

    private Integer calendar(BudgetYear year) {
        return result.input().baseYear() + year.year();
    }

    /** Parts in their order; receipts are negative. */
    private static List<Double> parts(BudgetYear year) {
        return List.of(year.purchases(), year.running(), year.debtService() + year.taxes(),
                year.funding() + year.sales() + year.borrowed());
    }

    private JFreeChart chart() {
        CategoryPlot plot = new CategoryPlot(amounts(), YearAxis.of(theme), moneyAxis(), bars());
        ChartFrame.style(plot, theme);
        addLevel(plot, 1, "To be appropriated", BudgetYear::appropriation, theme.text());
        if (years.stream().anyMatch(y -> y.cap().isPresent())) {
            addLevel(plot, 2, "Cap", y -> y.cap().orElse(Double.NaN), theme.fails(false));
        }
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        plot.setFixedLegendItems(legend());
        return ChartFrame.around(plot, TITLE, caption(), theme);
    }

    private DefaultCategoryDataset amounts() {
        DefaultCategoryDataset dataset = new DefaultCategoryDataset();
        for (int part = 0; part < PARTS.size(); part++) {
            for (BudgetYear year : years) {
                dataset.addValue(parts(year).get(part), PARTS.get(part), calendar(year));
            }
        }
        return dataset;
    }

    private NumberAxis moneyAxis() {
        double largest = years.stream().flatMap(y -> parts(y).stream()).mapToDouble(Math::abs).max().orElse(0);
        return ChartFrame.valueAxis(currency() + " of the year", MoneyTickFormat.reaching(largest), theme);
    }

    private StackedBarRenderer bars() {
        StackedBarRenderer bars = new StackedBarRenderer();
        bars.setBarPainter(new StandardBarPainter());
        bars.setShadowVisible(false);
        for (int part = 0; part < PARTS.size(); part++) {
            bars.setSeriesPaint(part, theme.oneOf(part, PARTS.size()));
        }
        bars.setDefaultToolTipGenerator((data, row, column) -> data.getRowKey(row) + ", " + data.getColumnKey(column) + ": "
                + Figures.exactMoney(currency(), data.getValue(row, column).doubleValue()));
        return bars;
    }

    private void addLevel(CategoryPlot plot, int place, String name, ToDoubleFunction<BudgetYear> amount,
            Color paint) {
        DefaultCategoryDataset dataset = new DefaultCategoryDataset();
        for (BudgetYear year : years) {
            double value = amount.applyAsDouble(year);
            dataset.addValue(Double.isNaN(value) ? null : (Number) value, name, calendar(year));
        }
        LevelRenderer levels = new LevelRenderer();
        levels.setSeriesPaint(0, paint);
        levels.setSeriesStroke(0, LEVEL);
        levels.setDefaultToolTipGenerator((data, row, column) -> name + ", " + data.getColumnKey(column) + ": "
                + Figures.exactMoney(currency(), data.getValue(row, column).doubleValue()));
        plot.setDataset(place, dataset);
        plot.setRenderer(place, levels);
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        for (int part = 0; part < PARTS.size(); part++) {
            items.add(ChartFrame.swatch(PARTS.get(part), theme.oneOf(part, PARTS.size())));
        }
        items.add(ChartFrame.line("To be appropriated", LEVEL, theme.text()));
        if (years.stream().anyMatch(y -> y.cap().isPresent())) {
            items.add(ChartFrame.line("Cap", LEVEL, theme.fails(false)));
        }
        return items;
    }

    private String caption() {
        BudgetYear most = years.stream().max(Comparator.comparingDouble(BudgetYear::appropriation)).orElseThrow();
        String above = years.stream().filter(y -> y.aboveCap().orElse(0) > 0)
                .map(y -> calendar(y) + " by " + Figures.money(currency(), y.aboveCap().getAsDouble()))
                .collect(Collectors.joining(", "));
        String cap = years.stream().noneMatch(y -> y.cap().isPresent()) ? "No cap is set: the plan’s “Budget cap per year” is 0."
                : above.isEmpty() ? "No year is above the cap." : "Above the cap: " + above + ".";
        return "Plan “" + result.plans().get(plan).name() + "”: most in " + calendar(most) + ", "
                + Figures.money(currency(), most.appropriation()) + ". " + cap;
    }

    /** Three digits, since tables beside the chart print sums of rounded purchases. */
    private String sentences() {
        return caption() + " To be appropriated: " + years.stream().map(y -> calendar(y) + " "
                + Figures.money(currency(), y.appropriation())).collect(Collectors.joining("; ")) + ".";
    }

    private ChartData data() {
        List<String> columns = new ArrayList<>(List.of("Year"));
        PARTS.forEach(p -> columns.add(p + " (" + currency() + ")"));
        columns.add("To be appropriated (" + currency() + ")");
        List<List<Object>> rows = new ArrayList<>();
        for (BudgetYear year : years) {
            List<Object> row = new ArrayList<>(List.of(calendar(year)));
            row.addAll(parts(year));
            row.add(year.appropriation());
            rows.add(row);
        }
        return new ChartData(columns, rows);
    }
}
