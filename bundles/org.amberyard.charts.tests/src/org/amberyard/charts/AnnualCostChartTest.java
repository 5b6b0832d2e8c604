package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostGroups;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.testsupport.SampleDistrict;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.data.category.CategoryDataset;
import org.junit.jupiter.api.Test;

class AnnualCostChartTest {
    private final StudyResult result = SampleDistrict.evaluated(SampleDistrict.large());
    private final Chart chart = AnnualCostChart.of(result, UnitSystem.US, ChartTheme.light());

    private CategoryDataset dataset() {
        return ((CategoryPlot) chart.chart().getPlot()).getDataset();
    }

    @Test
    void everyBarIsTheLedgersSumOfItsPlanYearAndGroup() {
        for (int plan = 0; plan < result.plans().size(); plan++) {
            for (CostCategory.Group group : CostCategory.Group.values()) {
                PlanPart<CostCategory.Group> key =
                        new PlanPart<>(plan, result.plans().get(plan).name(), group, group.label());
                for (int year = 0; year < result.input().years(); year++) {
                    double expected = CostGroups.amount(result.plans().get(plan).ledger(), year, group);
                    assertEquals(expected, dataset().getValue(key, 2026 + year).doubleValue(), 1e-9);
                }
            }
        }
    }

    @Test
    void yearsAreCalendarNumbers() {
        assertEquals(15, dataset().getColumnCount());
        assertEquals("2026", dataset().getColumnKey(0).toString());
        assertEquals("2040", dataset().getColumnKey(14).toString());
    }

    @Test
    void textAndDataNameEveryPlan() {
        result.plans().forEach(p -> assertTrue(chart.textAlternative().contains(p.name()), chart.textAlternative()));
        assertEquals(3 * 15, chart.data().rows().size());
        assertTrue(chart.data().columns().contains("Capital (USD)"));
    }

    @Test
    void tipsGiveTheExactAmount() {
        CategoryPlot plot = (CategoryPlot) chart.chart().getPlot();
        double amount = dataset().getValue(0, 3).doubleValue();
        String tip = plot.getRenderer().getToolTipGenerator(0, 3).generateToolTip(dataset(), 0, 3);
        assertEquals(dataset().getRowKey(0) + ", 2029: USD " + String.format(Locale.ROOT, "%,d", Math.round(amount)), tip);
    }
}
