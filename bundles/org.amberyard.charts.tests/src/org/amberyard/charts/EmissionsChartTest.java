package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.core.air.EmissionSource;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.testsupport.SampleDistrict;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.data.category.CategoryDataset;
import org.junit.jupiter.api.Test;

class EmissionsChartTest {
    private final StudyResult result = SampleDistrict.evaluated(SampleDistrict.small());

    private Chart chart(Pollutant pollutant) {
        return EmissionsChart.of(result, pollutant, UnitSystem.US, ChartTheme.light());
    }

    private static CategoryDataset dataset(Chart chart) {
        return ((CategoryPlot) chart.chart().getPlot()).getDataset();
    }

    private PlanPart<EmissionSource> key(int plan, EmissionSource source) {
        return new PlanPart<>(plan, result.plans().get(plan).name(), source, source.label());
    }

    @Test
    void everyBarIsTheMassOfItsPlanYearAndSource() {
        CategoryDataset bars = dataset(chart(Pollutant.CO2E));
        for (int plan = 0; plan < 2; plan++) {
            for (int year = 0; year < 10; year++) {
                for (EmissionSource source : List.of(EmissionSource.DRIVING, EmissionSource.GRID)) {
                    double kg = result.plans().get(plan).air().get(year).emissions().of(source).kg(Pollutant.CO2E);
                    assertEquals(kg / 1000, bars.getValue(key(plan, source), 2026 + year).doubleValue(), 1e-9);
                }
            }
        }
        assertFalse(bars.getRowKeys().contains(key(0, EmissionSource.UPSTREAM)), "what is upstream is not in it");
    }

    @Test
    void eachPollutantHasItsOwnNameUnitAndSources() {
        Chart dust = chart(Pollutant.PM25);
        assertEquals("emissions_pm25", dust.name());
        assertEquals("Emissions by year: PM2.5", dust.title());
        assertTrue(dust.data().columns().containsAll(List.of("Brakes (kg PM2.5)", "Tyres (kg PM2.5)")));
        assertFalse(chart(Pollutant.CO).data().columns().contains("Brakes (kg CO)"));
        assertTrue(chart(Pollutant.CO2E).data().columns().contains("Power plants (t CO2e)"));
    }

    @Test
    void allOfItRestsOnTheFactors() {
        assertEquals(new Subject(Subject.Kind.FACTORS, 0), chart(Pollutant.CO2E).subjects().of(null).orElseThrow());
    }

    @Test
    void whatIsNotKnownIsLeftOutAndSaid() {
        Chart nox = chart(Pollutant.NOX);
        assertNull(dataset(nox).getValue(key(1, EmissionSource.GRID), 2035));
        assertTrue(nox.textAlternative().contains("Electric in stages: not known, because a factor is missing."));
        assertTrue(nox.textAlternative().contains("Like-for-like diesel: "));
        int last = nox.data().rows().size() - 1;
        assertEquals("", nox.data().rows().get(last).get(nox.data().columns().indexOf("Total (kg NOx)")));
    }

    @Test
    void tipsTellMassAndUnit() {
        Chart co2e = chart(Pollutant.CO2E);
        CategoryPlot plot = (CategoryPlot) co2e.chart().getPlot();
        String tip = plot.getRenderer().getToolTipGenerator(0, 0).generateToolTip(dataset(co2e), 0, 0);
        assertTrue(tip.startsWith("Like-for-like diesel, Driving, 2026: ") && tip.endsWith(" t"), tip);
    }
}
