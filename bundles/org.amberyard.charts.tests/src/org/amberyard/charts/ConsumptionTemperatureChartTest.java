package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.core.duty.DutyInput;
import org.amberyard.core.duty.MeasuredUse;
import org.amberyard.core.duty.RouteInput;
import org.amberyard.core.plan.ConsumptionByTemperature;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.testsupport.SampleDistrict;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.entity.XYItemEntity;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.TextTitle;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;

class ConsumptionTemperatureChartTest {
    private static final int ROUTE = 1;
    private static final int DIESEL = 0;
    private static final int SMALL_PACK = 1;
    private static final int LARGE_PACK = 2;

    private final StudyResult result = SampleDistrict.evaluated(SampleDistrict.small());

    private static XYPlot plot(StudyResult of, UnitSystem system) {
        return (XYPlot) ConsumptionTemperatureChart.of(of, ROUTE, system, ChartTheme.light()).chart().getPlot();
    }

    /** The small district with measurements, invented. */
    private static StudyResult with(MeasuredUse... measured) {
        return with(SampleDistrict.small().duty().routes(), measured);
    }

    private static StudyResult with(List<RouteInput> routes, MeasuredUse... measured) {
        StudyInput s = SampleDistrict.small();
        DutyInput d = s.duty();
        DutyInput duty = new DutyInput(d.climate(), d.style(), d.riderMassKg(), routes, d.vehicles(), d.habit(),
                List.of(measured));
        return SampleDistrict.evaluated(new StudyInput(s.name(), s.currency(), s.baseYear(), s.years(), s.money(), duty,
                s.types(), s.buses(), s.depot(), s.prices(), s.funding(), s.air(), s.rules(), s.plans(), s.baseline(),
                s.trips()));
    }

    private static MeasuredUse measured(int route, int type, OptionalDouble outsideC, double kwh) {
        return new MeasuredUse(route, type, OptionalInt.of(2), outsideC, 100, kwh);
    }

    @Test
    void aLineForEachElectricTypeThatFitsInTheUnitsShown() {
        XYDataset metric = plot(result, UnitSystem.METRIC).getDataset(0);
        XYDataset us = plot(result, UnitSystem.US).getDataset(0);
        assertEquals(2, metric.getSeriesCount());
        List<ConsumptionByTemperature.Point> points = ConsumptionByTemperature.of(result, ROUTE, LARGE_PACK).points();
        assertEquals(points.size(), metric.getItemCount(1));
        for (int i = 0; i < points.size(); i++) {
            assertEquals(points.get(i).airC(), metric.getXValue(1, i), 1e-9);
            assertEquals(points.get(i).kwhPerKm(), metric.getYValue(1, i), 1e-9);
            assertEquals(points.get(i).airC() * 1.8 + 32, us.getXValue(1, i), 1e-9);
            assertEquals(points.get(i).kwhPerKm() * 1.609344, us.getYValue(1, i), 1e-9);
        }
    }

    @Test
    void measurementsWithATemperatureAreMarksOfTheirTypeOnTheirRoute() {
        StudyResult logged = with(measured(ROUTE, SMALL_PACK, OptionalDouble.of(10), 120),
                measured(ROUTE, SMALL_PACK, OptionalDouble.of(-10), 160), measured(ROUTE, SMALL_PACK, OptionalDouble.empty(), 99),
                measured(0, SMALL_PACK, OptionalDouble.of(5), 99), measured(ROUTE, DIESEL, OptionalDouble.of(5), 30));
        XYDataset marks = plot(logged, UnitSystem.METRIC).getDataset(1);
        assertEquals(2, marks.getItemCount(0));
        assertEquals(0, marks.getItemCount(1));
        assertEquals(-10, marks.getXValue(0, 0));
        assertEquals(1.6, marks.getYValue(0, 0), 1e-12);
        assertEquals(1.2, marks.getYValue(0, 1), 1e-12);
    }

    @Test
    void aCalibratedModelSaysSo() {
        StudyResult logged = with(measured(ROUTE, SMALL_PACK, OptionalDouble.of(10), 300));
        double factor = logged.duty().calibration(ROUTE).factor(logged.input().types().get(SMALL_PACK).spec());
        String expected = "the model is multiplied by " + String.format(Locale.ROOT, "%.2f", factor);
        assertTrue(subtitle(logged).contains(expected), subtitle(logged));
        assertFalse(subtitle(result).contains("multiplied"), subtitle(result));
    }

    private static String subtitle(StudyResult of) {
        JFreeChart chart = ConsumptionTemperatureChart.of(of, ROUTE, UnitSystem.US, ChartTheme.light()).chart();
        return ((TextTitle) chart.getSubtitle(0)).getText();
    }

    @Test
    void wordsTellTheLeastAndTheColdInTheUnitsShown() {
        String us = ConsumptionTemperatureChart.of(result, ROUTE, UnitSystem.US, ChartTheme.light()).textAlternative();
        assertTrue(us.startsWith("What route R02 takes from the battery by outside temperature. E150: least at "), us);
        assertTrue(us.contains(" kWh/mi at −4 °F; ") && us.contains(" E226: least at "), us);
        String metric = ConsumptionTemperatureChart.of(result, ROUTE, UnitSystem.METRIC, ChartTheme.light()).textAlternative();
        double cold = ConsumptionByTemperature.of(result, ROUTE, SMALL_PACK).points().stream().filter(p -> p.airC() == -20)
                .findFirst().orElseThrow().kwhPerKm();
        assertTrue(metric.contains(String.format(Locale.ROOT, "; %.2f kWh/km at −20 °C; ", cold)), metric);
    }

    @Test
    void dataHoldComputedAndMeasuredPoints() {
        StudyResult logged = with(measured(ROUTE, SMALL_PACK, OptionalDouble.of(10), 120));
        Chart chart = ConsumptionTemperatureChart.of(logged, ROUTE, UnitSystem.US, ChartTheme.light());
        int computed = ConsumptionByTemperature.of(logged, ROUTE, SMALL_PACK).points().size();
        assertEquals(2 * computed + 1, chart.data().rows().size());
        List<Object> row = chart.data().rows().get(computed);
        assertEquals(List.of("E150", "measured", 50.0), new ArrayList<>(row.subList(0, 3)));
        assertEquals("Energy per distance (kWh/mi)", chart.data().columns().get(3));
    }

    @Test
    void aPointLeadsToItsType() {
        Chart chart = ConsumptionTemperatureChart.of(result, ROUTE, UnitSystem.US, ChartTheme.light());
        XYDataset dataset = ((XYPlot) chart.chart().getPlot()).getDataset(0);
        XYItemEntity point = new XYItemEntity(new Rectangle2D.Double(), dataset, 1, 3, "", "");
        assertEquals(new Subject(Subject.Kind.TYPE, LARGE_PACK), chart.subjects().of(point).orElseThrow());
    }

    @Test
    void tipsNameTypeTemperatureAndUse() {
        XYPlot plot = plot(with(measured(ROUTE, SMALL_PACK, OptionalDouble.of(10), 120)), UnitSystem.METRIC);
        String mark = plot.getRenderer(1).getToolTipGenerator(0, 0).generateToolTip(plot.getDataset(1), 0, 0);
        assertEquals("E150, measured at 10 °C: 1.20 kWh/km", mark);
        String line = plot.getRenderer(0).getToolTipGenerator(1, 0).generateToolTip(plot.getDataset(0), 1, 0);
        assertTrue(line.startsWith("E226 at −30 °C: "), line);
    }

    @Test
    void aRouteThatNoTypeFitsSaysSo() {
        List<RouteInput> routes = SampleDistrict.small().duty().routes().stream()
                .map(r -> new RouteInput(r.name(), "D", r.runs(), r.energyModel())).toList();
        Chart chart = ConsumptionTemperatureChart.of(with(routes), ROUTE, UnitSystem.US, ChartTheme.light());
        assertEquals("No electric type on offer fits R02, or it is not driven on school days.", chart.textAlternative());
        assertEquals(List.of(), chart.data().rows());
    }
}
