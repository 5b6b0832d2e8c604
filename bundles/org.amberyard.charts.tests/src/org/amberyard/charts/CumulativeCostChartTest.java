package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.amberyard.core.money.CostLedger;
import org.amberyard.core.money.FlowTime;
import org.amberyard.core.money.Payback;
import org.amberyard.core.plan.Comparison;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.testsupport.SampleDistrict;
import org.jfree.chart.plot.XYPlot;
import org.junit.jupiter.api.Test;

class CumulativeCostChartTest {
    private final StudyResult result = SampleDistrict.evaluated(SampleDistrict.large());
    private final Chart chart = CumulativeCostChart.of(result, UnitSystem.US, ChartTheme.light());

    private XYPlot plot() {
        return (XYPlot) chart.chart().getPlot();
    }

    @Test
    void theLineEndsAtTheSumOfAllFlowsButWhatIsLeft() {
        CostLedger ledger = result.baseline().ledger();
        double expected = 0;
        for (int year = 0; year < ledger.years(); year++) {
            expected += ledger.yearTotal(year) - ledger.amount(year, FlowTime.END);
        }
        int last = plot().getDataset(0).getItemCount(0) - 1;
        assertEquals(2041, plot().getDataset(0).getXValue(0, last), 1e-9);
        assertEquals(expected, plot().getDataset(0).getYValue(0, last), 1e-6);
    }

    @Test
    void theRingStandsWhereThePlanCostsWhatTheBaselineCosts() {
        Comparison staged = result.comparisons().get(0);
        assertEquals(Payback.Outcome.AFTER, staged.simple().outcome());
        double year = plot().getDataset(1).getXValue(0, 0);
        assertEquals(2026 + staged.simple().years(), year, 1e-9);
        CumulativeCost plan = new CumulativeCost(result.plans().get(staged.plan()).ledger());
        assertEquals(plan.at(staged.simple().years()), plot().getDataset(1).getYValue(0, 1), 1e-6);
        assertEquals(0, plot().getDataset(1).getYValue(0, 0), 0, "a line leads down to the axis");
    }

    @Test
    void wordsSayWhichPlanPaysBackAndWhichDoesNot() {
        String text = chart.textAlternative();
        assertTrue(text.contains("“Electric in stages” pays back after 12.0 years (in 2038) against “Like-for-like diesel”."), text);
        assertTrue(text.contains("“Electric at once, no grant” does not pay back by the end of 2040."), text);
    }

    @Test
    void aCostBetweenTwoPointsLiesOnTheStraightLine() {
        CumulativeCost cost = new CumulativeCost(result.baseline().ledger());
        assertEquals((cost.sum(1) + cost.sum(2)) / 2, cost.at((cost.time(1) + cost.time(2)) / 2), 1e-6);
        assertEquals(cost.sum(2), cost.at(1), 1e-9);
    }
}
