package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.core.plan.BudgetYear;
import org.amberyard.core.plan.FleetYear;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.testsupport.SampleDistrict;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.data.category.CategoryDataset;
import org.junit.jupiter.api.Test;

class MoneyChartsTest {
    private static final StudyResult RESULT = SampleDistrict.evaluated(SampleDistrict.large());
    private static final int PLAN = 1;

    private static CategoryDataset data(Chart chart, int place) {
        return ((CategoryPlot) chart.chart().getPlot()).getDataset(place);
    }

    @Test
    void theStepsLeadFromTheBaselineToThePlan() {
        Chart chart = PlanWaterfallChart.of(RESULT, RESULT.input().baseline(), PLAN, UnitSystem.US, ChartTheme.light());
        CategoryDataset bars = data(chart, 0);
        double sum = 0;
        for (int column = 0; column < bars.getColumnCount() - 1; column++) {
            sum += bars.getValue(0, column).doubleValue();
        }
        assertEquals(RESULT.plans().get(PLAN).measures().presentCost(), sum, 1e-5);
        assertEquals(sum, bars.getValue(0, bars.getColumnCount() - 1).doubleValue(), 1e-5);
        assertEquals(bars.getColumnCount(), chart.data().rows().size());
        assertTrue(chart.textAlternative().contains("in present money than “Like-for-like diesel”."), chart.textAlternative());
    }

    @Test
    void theWayBackHasTheSameStepsTheOtherWayRound() {
        Chart there = PlanWaterfallChart.of(RESULT, RESULT.input().baseline(), PLAN, UnitSystem.US, ChartTheme.light());
        Chart back = PlanWaterfallChart.of(RESULT, PLAN, RESULT.input().baseline(), UnitSystem.US, ChartTheme.light());
        for (int column = 1; column < data(there, 0).getColumnCount() - 1; column++) {
            assertEquals(-data(there, 0).getValue(0, column).doubleValue(), data(back, 0).getValue(0, column).doubleValue(), 1e-6);
        }
        assertTrue(back.textAlternative().startsWith("“Like-for-like diesel” costs "), back.textAlternative());
    }

    @Test
    void aPlanHasNoWayToItself() {
        Chart chart = PlanWaterfallChart.of(RESULT, PLAN, PLAN, UnitSystem.US, ChartTheme.light());
        assertTrue(chart.textAlternative().contains("is compared with itself; choose another plan."), chart.textAlternative());
    }

    @Test
    void theBudgetIsWhatMustBeAppropriated() {
        Chart chart = BudgetChart.of(RESULT, PLAN, UnitSystem.US, ChartTheme.light());
        List<BudgetYear> years = RESULT.plans().get(PLAN).finance().budget();
        for (int year = 0; year < years.size(); year++) {
            double parts = 0;
            for (int part = 0; part < data(chart, 0).getRowCount(); part++) {
                parts += data(chart, 0).getValue(part, year).doubleValue();
            }
            assertEquals(years.get(year).appropriation(), parts, 1e-6);
            assertEquals(parts, data(chart, 1).getValue(0, year).doubleValue(), 1e-6);
        }
        assertTrue(chart.textAlternative().contains("No cap is set: the plan’s “Budget cap per year” is 0."), chart.textAlternative());
        String first = Figures.money(RESULT.input().currency(), years.get(0).appropriation());
        assertTrue(chart.textAlternative().contains("To be appropriated: " + RESULT.input().baseYear() + " " + first + "; "), chart.textAlternative());
    }

    /** Titles along an axis too: what is drawn as outlines is found by no search and read by nobody. */
    @Test
    void titlesOfAxesAreWordsInVectors() {
        String svg = ChartExport.svg(CumulativeCostChart.of(RESULT, UnitSystem.US, ChartTheme.light()), 900, 400);
        assertTrue(svg.contains(">Cumulative cost (USD)</text"), svg.substring(0, 2000));
    }

    @Test
    void theFleetIsCountedByKind() {
        Chart chart = FleetMixChart.of(RESULT, PLAN, UnitSystem.US, ChartTheme.light());
        List<FleetYear> years = FleetYear.of(RESULT.input(), RESULT.plans().get(PLAN).fleet());
        int buses = RESULT.input().buses().size();
        for (FleetYear year : years) {
            assertEquals(buses, year.electric() + year.engine(), "places stay filled in the sample");
            assertEquals(year.electric(), data(chart, 0).getValue(0, year.year()).intValue());
            assertEquals(year.meanAgeYears(), data(chart, 1).getValue(0, year.year()).doubleValue(), 1e-12);
        }
        assertTrue(years.get(years.size() - 1).electric() > years.get(0).electric());
    }
}
