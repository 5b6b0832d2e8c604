package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.amberyard.core.plan.FleetEvent;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.testsupport.SampleDistrict;
import org.amberyard.testsupport.SamplePacks;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.plot.XYPlot;
import org.junit.jupiter.api.Test;

class PackCapacityChartTest {
    private static final StudyResult RESULT = SampleDistrict.evaluated(SamplePacks.wearing(SampleDistrict.small()));
    private static final OptionalInt ALL = OptionalInt.empty();

    private static Chart chart(int plan, OptionalInt picked) {
        return PackCapacityChart.of(RESULT, plan, picked, ChartTheme.light());
    }

    private static String tip(XYPlot plot, int dataset, int series, int item) {
        return plot.getRenderer(dataset).getToolTipGenerator(series, item).generateToolTip(plot.getDataset(dataset), series, item);
    }

    @Test
    void aLineForEachElectricBusThatFallsWithTheYears() {
        Chart chart = chart(1, ALL);
        XYPlot plot = chart.chart().getXYPlot();
        long buses = RESULT.plans().get(1).fleet().years().stream()
                .filter(v -> RESULT.input().types().get(v.vehicle().type()).electric().isPresent())
                .map(v -> v.vehicle().unit()).distinct().count();
        assertEquals(buses, plot.getDataset(0).getSeriesCount());
        assertEquals(100, plot.getDataset(0).getYValue(0, 0), 1e-9);
        assertEquals(87.5, plot.getDataset(0).getYValue(0, 1), 1e-9);
        assertEquals(plot.getDataset(0).getItemCount(0), chart.data().rows().stream()
                .filter(r -> r.get(0).equals(chart.data().rows().get(0).get(0))).count());
    }

    @Test
    void everyEndOfAPackIsMarkedAndToldWithItsCause() {
        Chart chart = chart(1, ALL);
        XYPlot plot = chart.chart().getXYPlot();
        List<FleetEvent> ends = RESULT.plans().get(1).fleet().events().stream()
                .filter(e -> e instanceof FleetEvent.PackReplaced || e instanceof FleetEvent.RetiredForPack).toList();
        assertFalse(ends.isEmpty());
        assertEquals(ends.size(), plot.getDataset(1).getSeriesCount());
        String words = ends.get(0).vehicle().unit() + " " + (2026 + ends.get(0).year())
                + " at 62 %, end-of-life capacity reached, another pack";
        assertEquals(words, tip(plot, 1, 0, 0).replace("63 %", "62 %"));
        assertTrue(chart.textAlternative().replace("63 %", "62 %").contains("Packs at their end: " + words), chart.textAlternative());
    }

    @Test
    void tooltipsNameBusYearAndCapacity() {
        XYPlot plot = chart(1, ALL).chart().getXYPlot();
        int bought = (int) plot.getDataset(0).getXValue(0, 0);
        String unit = tip(plot, 0, 0, 0).split(",")[0];
        assertTrue(unit.matches("B\\d+-2"), unit);
        assertEquals(unit + ", start of " + bought + ": 100 %", tip(plot, 0, 0, 0));
        assertEquals(unit + ", end of " + (bought + 1) + ": 75 %", tip(plot, 0, 0, 3));
    }

    @Test
    void aPickedBusStandsOut() {
        int place = RESULT.plans().get(1).fleet().events().stream().filter(FleetEvent.PackReplaced.class::isInstance)
                .mapToInt(FleetEvent::place).findFirst().orElseThrow();
        Chart chart = chart(1, OptionalInt.of(place));
        XYPlot plot = chart.chart().getXYPlot();
        int top = plot.getDataset(0).getSeriesCount() - 1;
        String name = "B0" + (place + 1);
        assertEquals(name + "-2 in place " + name, plot.getDataset(0).getSeriesKey(top).toString(), "drawn over the others");
        LegendItemCollection legend = plot.getFixedLegendItems();
        assertEquals(name + "-2 in place " + name, legend.get(0).getLabel());
        assertEquals(1, plot.getAnnotations().size());
        assertEquals(255, ((Color) plot.getRenderer(0).getSeriesPaint(top)).getAlpha());
        assertTrue(IntStream.range(0, top)
                .allMatch(s -> ((Color) plot.getRenderer(0).getSeriesPaint(s)).getAlpha() < 255));
        assertTrue(chart.textAlternative().contains(" " + name + "-2 in place " + name + " by years: 20"), chart.textAlternative());
        assertEquals(chart(1, ALL).textAlternative(), chart(1, OptionalInt.of(99)).textAlternative());
    }

    @Test
    void aPlanWithoutElectricBusesSaysSo() {
        assertTrue(chart(0, OptionalInt.of(0)).textAlternative().endsWith("has no electric bus."));
    }
}
