package org.amberyard.charts;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostGroups;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.category.DefaultCategoryDataset;

/** Cost of each year by cost group, the plans side by side under letters; credits hang below the axis. */
public final class AnnualCostChart {
    private static final String TITLE = "Annual cost by plan";
    private static final int HEIGHT = 440;

    private final StudyResult result;
    private final ChartTheme theme;

    private AnnualCostChart(StudyResult result, ChartTheme theme) {
        this.result = result;
        this.theme = theme;
    }

    /** The chart of a result. Money has no unit system; the argument keeps all charts alike. */
    public static Chart of(StudyResult result, UnitSystem system, ChartTheme theme) {
        AnnualCostChart build = new AnnualCostChart(result, theme);
        return new Chart("annual_cost", TITLE, build.chart(), new AnnualCostText(result).sentences(), build.data(),
                HEIGHT, ChartFrame.LEAST_HEIGHT, Subjects.NONE);
    }

    private JFreeChart chart() {
        CategoryPlot plot = new CategoryPlot(dataset(), PlansByYear.axis(result, theme), moneyAxis(),
                PlansByYear.renderer(keys(), theme::group, this::tip, theme));
        ChartFrame.style(plot, theme);
        plot.setFixedLegendItems(legend());
        return ChartFrame.around(plot, TITLE, PlansByYear.subtitle("In " + StatedMoney.of(result.input()), result), theme);
    }

    private String tip(CategoryDataset data, int row, int column) {
        return data.getRowKey(row) + ", " + data.getColumnKey(column) + ": "
                + Figures.exactMoney(result.input().currency(), data.getValue(row, column).doubleValue());
    }

    private DefaultCategoryDataset dataset() {
        DefaultCategoryDataset dataset = new DefaultCategoryDataset();
        for (PlanPart<CostCategory.Group> key : keys()) {
            CostLedger ledger = result.plans().get(key.plan()).ledger();
            for (int year = 0; year < ledger.years(); year++) {
                Integer calendar = result.input().baseYear() + year;
                dataset.addValue(CostGroups.amount(ledger, year, key.part()), key, calendar);
            }
        }
        return dataset;
    }

    private List<PlanPart<CostCategory.Group>> keys() {
        List<PlanPart<CostCategory.Group>> keys = new ArrayList<>();
        for (int plan = 0; plan < result.plans().size(); plan++) {
            for (CostCategory.Group group : CostCategory.Group.values()) {
                keys.add(new PlanPart<>(plan, result.plans().get(plan).name(), group, group.label()));
            }
        }
        return keys;
    }

    private NumberAxis moneyAxis() {
        return ChartFrame.valueAxis("Cost per year (" + result.input().currency() + ")",
                MoneyTickFormat.reaching(largest()), theme);
    }

    private double largest() {
        double largest = 0;
        for (PlanPart<CostCategory.Group> key : keys()) {
            CostLedger ledger = result.plans().get(key.plan()).ledger();
            for (int year = 0; year < ledger.years(); year++) {
                largest = Math.max(largest, Math.abs(CostGroups.amount(ledger, year, key.part())));
            }
        }
        return largest;
    }

    private LegendItemCollection legend() {
        LegendItemCollection items = new LegendItemCollection();
        for (CostCategory.Group group : CostCategory.Group.values()) {
            items.add(ChartFrame.swatch(group.label(), theme.group(group)));
        }
        return items;
    }

    private ChartData data() {
        StudyInput study = result.input();
        List<String> columns = new ArrayList<>(List.of("Plan", "Year"));
        for (CostCategory.Group group : CostCategory.Group.values()) {
            columns.add(group.label() + " (" + study.currency() + ")");
        }
        List<List<Object>> rows = new ArrayList<>();
        result.plans().forEach(p -> {
            for (int year = 0; year < study.years(); year++) {
                List<Object> row = new ArrayList<>(List.of(p.name(), study.baseYear() + year));
                for (CostCategory.Group group : CostCategory.Group.values()) {
                    row.add(CostGroups.amount(p.ledger(), year, group));
                }
                rows.add(row);
            }
        });
        return new ChartData(columns, rows);
    }
}
