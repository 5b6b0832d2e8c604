package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.amberyard.core.plan.FleetEvent;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.testsupport.SampleDistrict;
import org.jfree.chart.plot.XYPlot;
import org.junit.jupiter.api.Test;

class PackCapacityChartTest {
    private static final StudyResult RESULT = SampleDistrict.evaluated(SampleDistrict.small());

    @Test
    void aLineForEachElectricBusThatFallsWithTheYears() {
        Chart chart = PackCapacityChart.of(RESULT, 1, ChartTheme.light());
        XYPlot plot = chart.chart().getXYPlot();
        long buses = RESULT.plans().get(1).fleet().years().stream()
                .filter(v -> RESULT.input().types().get(v.vehicle().type()).electric().isPresent())
                .map(v -> v.vehicle().unit()).distinct().count();
        assertEquals(buses, plot.getDataset(0).getSeriesCount());
        int last = plot.getDataset(0).getItemCount(0) - 1;
        assertEquals(100, plot.getDataset(0).getYValue(0, 0), 1e-9);
        assertTrue(plot.getDataset(0).getYValue(0, last) < 100);
        assertEquals(plot.getDataset(0).getItemCount(0), chart.data().rows().stream()
                .filter(r -> r.get(0).equals(chart.data().rows().get(0).get(0))).count());
    }

    @Test
    void everyEndOfAPackIsMarked() {
        XYPlot plot = PackCapacityChart.of(RESULT, 1, ChartTheme.light()).chart().getXYPlot();
        long ends = RESULT.plans().get(1).fleet().events().stream()
                .filter(e -> e instanceof FleetEvent.PackReplaced || e instanceof FleetEvent.RetiredForPack).count();
        assertEquals(ends, plot.getDataset(1).getSeriesCount());
    }

    @Test
    void aPlanWithoutElectricBusesSaysSo() {
        Chart chart = PackCapacityChart.of(RESULT, 0, ChartTheme.light());
        assertTrue(chart.textAlternative().endsWith("has no electric bus."), chart.textAlternative());
    }
}
