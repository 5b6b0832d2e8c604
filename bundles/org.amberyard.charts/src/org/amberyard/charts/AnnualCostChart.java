package org.amberyard.charts;

import java.awt.BasicStroke;
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
import org.jfree.chart.axis.SubCategoryAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.GroupedStackedBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.data.KeyToGroupMap;
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

    /** A bar of a plan in a group of costs. */
    record SeriesKey(int plan, String label, CostCategory.Group group) implements Comparable<SeriesKey> {
        @Override
        public int compareTo(SeriesKey other) {
            return plan != other.plan ? Integer.compare(plan, other.plan) : group.compareTo(other.group);
        }

        @Override
        public String toString() {
            return label + ", " + group.label();
        }
    }

    /** The chart of a result. Money has no unit system; the argument keeps all charts alike. */
    public static Chart of(StudyResult result, UnitSystem system, ChartTheme theme) {
        AnnualCostChart build = new AnnualCostChart(result, theme);
        return new Chart("annual_cost", TITLE, build.chart(), new AnnualCostText(result).sentences(), build.data(),
                HEIGHT, ChartFrame.LEAST_HEIGHT, Subjects.NONE);
    }

    private JFreeChart chart() {
        CategoryPlot plot = new CategoryPlot(dataset(), planAxis(), moneyAxis(), renderer());
        ChartFrame.style(plot, theme);
        plot.setFixedLegendItems(legend());
        return ChartFrame.around(plot, TITLE, subtitle(), theme);
    }

    private String subtitle() {
        String money = "In " + StatedMoney.of(result.input());
        if (result.plans().size() < 2) {
            return money + "; " + result.baseline().name();
        }
        StringBuilder key = new StringBuilder(money);
        for (int plan = 0; plan < result.plans().size(); plan++) {
            key.append("    ").append(letter(plan)).append(" = ").append(result.plans().get(plan).name());
        }
        return key.toString();
    }

    private static String letter(int plan) {
        return String.valueOf((char) ('A' + plan % 26));
    }

    private DefaultCategoryDataset dataset() {
        DefaultCategoryDataset dataset = new DefaultCategoryDataset();
        for (SeriesKey key : keys()) {
            CostLedger ledger = result.plans().get(key.plan()).ledger();
            for (int year = 0; year < ledger.years(); year++) {
                Integer calendar = result.input().baseYear() + year;
                dataset.addValue(CostGroups.amount(ledger, year, key.group()), key, calendar);
            }
        }
        return dataset;
    }

    private List<SeriesKey> keys() {
        List<SeriesKey> keys = new ArrayList<>();
        for (int plan = 0; plan < result.plans().size(); plan++) {
            for (CostCategory.Group group : CostCategory.Group.values()) {
                keys.add(new SeriesKey(plan, result.plans().get(plan).name(), group));
            }
        }
        return keys;
    }

    private SubCategoryAxis planAxis() {
        SubCategoryAxis axis = new SubCategoryAxis(null);
        ChartFrame.style(axis, theme);
        axis.setSubLabelFont(theme.tickFont());
        axis.setSubLabelPaint(theme.quietText());
        axis.setCategoryMargin(0.2);
        axis.setLowerMargin(0.01);
        axis.setUpperMargin(0.01);
        axis.setTickMarksVisible(false);
        if (result.plans().size() > 1) {
            for (int plan = 0; plan < result.plans().size(); plan++) {
                axis.addSubCategory(letter(plan));
            }
        }
        return axis;
    }

    private NumberAxis moneyAxis() {
        return ChartFrame.valueAxis("Cost per year (" + result.input().currency() + ")",
                MoneyTickFormat.reaching(largest()), theme);
    }

    private double largest() {
        double largest = 0;
        for (SeriesKey key : keys()) {
            CostLedger ledger = result.plans().get(key.plan()).ledger();
            for (int year = 0; year < ledger.years(); year++) {
                largest = Math.max(largest, Math.abs(CostGroups.amount(ledger, year, key.group())));
            }
        }
        return largest;
    }

    private GroupedStackedBarRenderer renderer() {
        GroupedStackedBarRenderer renderer = new GroupedStackedBarRenderer();
        renderer.setBarPainter(new StandardBarPainter());
        renderer.setShadowVisible(false);
        renderer.setItemMargin(0.06);
        renderer.setDrawBarOutline(true);
        renderer.setDefaultOutlineStroke(new BasicStroke(0.4f));
        renderer.setDefaultToolTipGenerator((data, row, column) -> data.getRowKey(row) + ", " + data.getColumnKey(column) + ": "
                + Figures.exactMoney(result.input().currency(), data.getValue(row, column).doubleValue()));
        KeyToGroupMap groups = new KeyToGroupMap(0);
        List<SeriesKey> keys = keys();
        for (int row = 0; row < keys.size(); row++) {
            groups.mapKeyToGroup(keys.get(row), keys.get(row).plan());
            renderer.setSeriesPaint(row, theme.group(keys.get(row).group()));
            renderer.setSeriesOutlinePaint(row, theme.background());
        }
        renderer.setSeriesToGroupMap(groups);
        return renderer;
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
