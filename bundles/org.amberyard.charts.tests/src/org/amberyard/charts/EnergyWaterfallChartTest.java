package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.amberyard.core.duty.EnergyCauses;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.testsupport.SampleDistrict;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.data.category.CategoryDataset;
import org.junit.jupiter.api.Test;

class EnergyWaterfallChartTest {
    private static final int ROUTE = 1;
    private static final int DIESEL = 0;
    private static final int SMALL_PACK = 1;
    private static final double KM_PER_MILE = 1.609344;

    private final StudyResult result = SampleDistrict.evaluated(SampleDistrict.small());
    private final EnergyUse year = result.duty().use(ROUTE, SMALL_PACK).orElseThrow().year();

    private Chart chart(UnitSystem system) {
        return EnergyWaterfallChart.of(result, ROUTE, SMALL_PACK, system, ChartTheme.light());
    }

    private CategoryDataset dataset(UnitSystem system) {
        return ((CategoryPlot) chart(system).chart().getPlot()).getDataset();
    }

    private EnergyByCause of(EnergyUse use) {
        return new EnergyByCause(result, ROUTE, SMALL_PACK, use, UnitSystem.METRIC);
    }

    @Test
    void theBarsAddUpToTheTotalWhichIsWhatTheBatteryGives() {
        CategoryDataset metric = dataset(UnitSystem.METRIC);
        int last = metric.getColumnCount() - 1;
        double sum = 0;
        for (int bar = 0; bar < last; bar++) {
            sum += metric.getValue(0, bar).doubleValue();
        }
        assertEquals("Total", metric.getColumnKey(last));
        assertEquals(metric.getValue(0, last).doubleValue(), sum, 1e-12);
        assertEquals(year.batteryKwh() / year.km(), sum, 1e-9);
        assertEquals(KM_PER_MILE * sum, dataset(UnitSystem.US).getValue(0, last).doubleValue(), 1e-9);
    }

    @Test
    void everyCauseHasItsOwnBar() {
        double km = 100;
        EnergyCauses causes = new EnergyCauses(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11);
        EnergyUse use = new EnergyUse(km, 5, causes.totalKwh(), 0, causes, 0, 0, 0, 0);
        assertEquals(List.of(0.01, 0.02, 0.03, 0.04, 0.05, 0.06, 0.11, 0.07, 0.08, 0.09, 0.1),
                of(use).shown().stream().map(EnergyByCause.Cause::perDistance).toList());
        assertEquals(List.of("Rolling resistance", "Air drag", "Climbs", "Stops: friction brakes", "Motor and gears",
                "Battery resistance", "Driving, not split", "Auxiliaries", "Cabin heat", "Cabin cooling",
                "Battery heat and cooling"), of(use).causes().stream().map(EnergyByCause.Cause::label).toList());
        assertTrue(of(use).caption().contains("driving by a consumption curve"), of(use).caption());
    }

    @Test
    void whatComesBesidesTheBatteryIsSaid() {
        EnergyCauses causes = new EnergyCauses(10, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
        String both = of(new EnergyUse(100, 5, 10, 0, causes, 660, 0, 42, 0)).caption();
        assertTrue(both.endsWith("; 660 kWh a year for heat at the plug come from the yard besides; "
                + "the heater burns 42 L of fuel a year besides"), both);
        String none = of(new EnergyUse(100, 5, 10, 0, causes, 0, 0, 0, 0)).sentences();
        assertFalse(none.contains("besides"), none);
        assertTrue(none.contains(" 0.10 kWh/km in all. Rolling resistance 0.10. Nothing goes into: Air drag; "), none);
    }

    @Test
    void wordsAndDataNameRouteTypeAndUnit() {
        String text = chart(UnitSystem.US).textAlternative();
        String total = String.format(Locale.ROOT, "%.2f kWh/mi in all. ", KM_PER_MILE * year.batteryKwh() / year.km());
        assertTrue(text.startsWith("Route R02 with E150, ") && text.contains(total), text);
        ChartData data = chart(UnitSystem.METRIC).data();
        assertEquals("Energy per distance (kWh/km)", data.columns().get(1));
        assertEquals(12, data.rows().size());
        assertEquals(year.causes().rollingKwh() / year.km(), (double) data.rows().get(0).get(1), 1e-12);
    }

    @Test
    void figuresStandOnTheBars() {
        CategoryPlot plot = (CategoryPlot) chart(UnitSystem.METRIC).chart().getPlot();
        String label = plot.getRenderer().getItemLabelGenerator(0, 0).generateLabel(plot.getDataset(), 0, 0);
        assertEquals(String.format(Locale.ROOT, "%.2f", year.causes().rollingKwh() / year.km()), label);
        String tip = plot.getRenderer().getToolTipGenerator(0, 0).generateToolTip(plot.getDataset(), 0, 0);
        assertEquals("Rolling resistance: " + label + " kWh/km", tip);
    }

    @Test
    void theBarsLeadToTheType() {
        assertEquals(new Subject(Subject.Kind.TYPE, SMALL_PACK), chart(UnitSystem.US).subjects().of(null).orElseThrow());
    }

    @Test
    void anEngineHasNoSuchChartAndSaysSo() {
        Chart none = EnergyWaterfallChart.of(result, ROUTE, DIESEL, UnitSystem.US, ChartTheme.light());
        assertEquals("Diesel C is not electric, does not fit R02 or never drives there.", none.textAlternative());
        assertEquals(List.of(), none.data().rows());
    }
}
