package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.charts.ChartTheme;
import org.amberyard.charts.EmissionsChart;
import org.amberyard.core.air.EmissionSource;
import org.amberyard.core.air.GrantTerms;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.plan.BusInput;
import org.amberyard.core.plan.PlaceholderUse;
import org.amberyard.core.plan.ReplacedBus;
import org.amberyard.core.plan.ReplacedBuses;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.why.Derivation;
import org.amberyard.testsupport.SampleAir;
import org.amberyard.testsupport.SampleDistrict;
import org.junit.jupiter.api.Test;

class AirTablesTest {
    private final StudyResult result = SampleDistrict.evaluated(SampleDistrict.small());
    private final List<ReplacedBus> replaced = ReplacedBuses.of(result, 1);

    private static ResultTable table(StudyResult result, String name) {
        return ResultTables.of(result, UnitSystem.US).stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
    }

    private static List<Integer> rows(ResultTable table, String column, Object value) {
        List<Integer> rows = new ArrayList<>();
        for (int row = 0; row < table.rows().size(); row++) {
            if (value.equals(table.cell(row, column))) {
                rows.add(row);
            }
        }
        return rows;
    }

    @Test
    void sourcesAddUpToTheTotalInKilogramsAndShortTons() {
        ResultTable years = table(result, "emissions_by_year");
        assertEquals(2 * 10 * Pollutant.values().length, years.rows().size());
        for (int row : rows(years, "pollutant", "CO2e")) {
            double sum = 0;
            for (String source : List.of("driving", "idling", "heaters", "brakes", "tyres", "power_plants")) {
                sum += (Double) years.cell(row, source);
            }
            assertEquals(sum, (Double) years.cell(row, "total"), 1e-6);
            assertEquals(sum / 907.18474, (Double) years.cell(row, "total_short_tons"), 1e-6);
            assertTrue((Double) years.cell(row, "upstream") > 0, "beside the total, not in it");
        }
    }

    @Test
    void whatIsNotKnownIsMissing() {
        ResultTable years = table(result, "emissions_by_year");
        int last = rows(years, "pollutant", "NOx").get(19);
        assertTrue((Double) years.cell(last, "driving") > 0);
        assertNull(years.cell(last, "power_plants"), "no factor of the grid");
        assertNull(years.cell(last, "total"));
    }

    @Test
    void busesAreToldBeforeAndAfterAndTogether() {
        ResultTable buses = table(result, "emissions_by_bus");
        assertEquals((replaced.size() + 1) * GrantMeasure.values().length, buses.rows().size());
        List<Integer> nox = rows(buses, "pollutant", "NOx");
        double sum = 0;
        for (int i = 0; i < replaced.size(); i++) {
            double before = (Double) buses.cell(nox.get(i), "before_kg");
            double after = (Double) buses.cell(nox.get(i), "after_kg");
            assertEquals(before - after, (Double) buses.cell(nox.get(i), "reduced_kg"), 1e-9);
            assertEquals(before / 907.18474, (Double) buses.cell(nox.get(i), "before"), 1e-9);
            sum += before - after;
        }
        int all = nox.get(replaced.size());
        assertEquals("All", buses.cell(all, "place"));
        assertNull(buses.cell(all, "year"));
        assertEquals(sum, (Double) buses.cell(all, "reduced_kg"), 1e-9);
    }

    @Test
    void tonsArePrintedAsGrantTablesHaveThem() {
        assertEquals("0.123", GrantMeasure.NOX.printed(0.1234 * GrantTerms.KG_PER_SHORT_TON));
        assertEquals("0.0012", GrantMeasure.PM25.printed(0.00123 * GrantTerms.KG_PER_SHORT_TON));
        assertEquals("14.6", GrantMeasure.CO2.printed(14.62 * GrantTerms.KG_PER_SHORT_TON));
        assertEquals("", GrantMeasure.CO2.printed(Double.NaN));
    }

    /** The first bus is kept for three years more in the baseline than in the plan. */
    private static StudyResult early() {
        StudyInput small = SampleDistrict.small();
        List<BusInput> buses = new ArrayList<>(small.buses());
        BusInput first = buses.get(0);
        buses.set(0, new BusInput(first.name(), first.role(), first.type(), first.route(), first.inServiceYear(), first.odometerKm(),
                first.otherKmPerYear(), first.idleHoursPerYear(), OptionalDouble.empty(), OptionalInt.of(3)));
        return SampleDistrict.evaluated(SampleDistrict.withBuses(small, buses));
    }

    @Test
    void lifetimeIsTheRemainingLifeOfTheOldBus() {
        ResultTable life = table(early(), "emissions_lifetime");
        int row = rows(life, "place", "B01").get(0);
        assertEquals(2026, life.cell(row, "year"));
        assertEquals(2029, life.cell(row, "retires"));
        assertEquals(3.0, life.cell(row, "remaining_years"));
        assertEquals(3 * (Double) life.cell(row, "reduced_kg"), (Double) life.cell(row, "lifetime_kg"), 1e-9);
    }

    @Test
    void aTonHasItsCostWithTheFormula() {
        ResultTable cost = table(early(), "cost_effectiveness");
        for (int row = 0; row < cost.rows().size(); row++) {
            Double perTon = (Double) cost.cell(row, "cost_per_short_ton");
            double plain = (Double) cost.cell(row, "cost") / (Double) cost.cell(row, "reduced");
            boolean recovered = cost.cell(row, "measure").toString().endsWith("capital recovery");
            assertEquals(recovered ? 0.1113265 * plain : plain, perTon, 1e-6 * plain);
            assertTrue(cost.cell(row, "formula").toString().contains(" ÷ "), cost.cell(row, "formula").toString());
        }
        assertEquals(8, cost.rows().size());
    }

    @Test
    void factorsCiteTheirSources() {
        ResultTable factors = table(result, "emission_factors");
        int row = rows(factors, "cause", "distance").get(2);
        assertEquals("engines diesel to 2019", factors.cell(row, "group"));
        assertEquals("NOx", factors.cell(row, "pollutant"));
        assertEquals(4.5, (Double) factors.cell(row, "value"), 1e-12);
        assertEquals("g/km", factors.cell(row, "unit"));
        assertEquals(4.5 * 1.609344, (Double) factors.cell(row, "value_us"), 1e-12);
        assertEquals("g/mi", factors.cell(row, "unit_us"));
        assertEquals("published", factors.cell(row, "quality"));
        assertEquals("invented", factors.cell(row, "citation"));
        assertEquals("no", factors.cell(row, "placeholder"));
    }

    @Test
    void harmIsDiscountedAtTheRateOfItsTable() {
        ResultTable harm = table(result, "air_harm_by_year");
        double cost = (Double) harm.cell(3, "social_cost");
        assertTrue(cost > 0);
        assertEquals(cost / Math.pow(1.02, 4), (Double) harm.cell(3, "social_cost_present"), 1e-6);
        assertNull(harm.cell(3, "health_low"));
    }

    @Test
    void everyFigureSaysHowItComesAbout() {
        for (String name : List.of("emissions_by_year", "emissions_by_bus", "emissions_lifetime", "cost_effectiveness",
                "air_harm_by_year")) {
            int place = ResultTables.titles().indexOf(table(result, name).title());
            ResultTable shown = table(result, name);
            for (String column : List.of("driving", "tyres", "total", "reduced", "lifetime", "cost_per_short_ton", "social_cost")) {
                boolean here = shown.columns().stream().anyMatch(c -> c.name().equals(column));
                for (int row = 0; here && row < shown.rows().size(); row += 7) {
                    Derivation why = ResultTables.why(place, result, row, shown.column(column));
                    assertTrue(same((Double) shown.cell(row, column), why.value()), name + " " + column + " " + row);
                }
            }
        }
    }

    private static boolean same(Double shown, double derived) {
        return shown == null ? Double.isNaN(derived) : Math.abs(shown - derived) <= 1e-9 * Math.abs(shown) + 1e-12;
    }

    private static StudyResult standingIn() {
        return SampleDistrict.evaluated(SampleDistrict.withAir(SampleDistrict.small(), SampleAir.placeholders()));
    }

    @Test
    void figuresThatRestOnPlaceholdersSayOnEveryExportThatTheyAreNotForSubmission() throws IOException {
        StudyResult standingIn = standingIn();
        List<String> marked = ResultTables.of(standingIn, UnitSystem.US).stream().filter(t -> !t.watermark().isEmpty())
                .map(ResultTable::name).toList();
        assertEquals(List.of("emissions_by_year", "emissions_by_bus", "emissions_lifetime", "cost_effectiveness",
                "emission_factors"), marked, "CO2e rests on published factors, so the headline and its harm do");
        String csv = CsvTables.document(table(standingIn, "emissions_by_year"));
        assertTrue(csv.lines().findFirst().orElseThrow().endsWith(",Standing"));
        assertTrue(csv.lines().skip(1).allMatch(l -> l.endsWith(PlaceholderUse.WORDS)));
        StringWriter json = new StringWriter();
        ResultsJson.write(standingIn, UnitSystem.US, json);
        assertTrue(json.toString().contains("\"watermark\": \"" + PlaceholderUse.WORDS + "\""));
        ResultTable shown = table(standingIn, "emissions_by_bus").marked();
        assertEquals(PlaceholderUse.WORDS, shown.cell(0, ResultTable.STANDING));
    }

    @Test
    void chartsSayItToo() {
        var nox = EmissionsChart.of(standingIn(), Pollutant.NOX, UnitSystem.US, ChartTheme.light());
        assertTrue(nox.textAlternative().endsWith(PlaceholderUse.WORDS));
        assertTrue(nox.data().rows().stream().allMatch(r -> r.contains(PlaceholderUse.WORDS)));
        var co2e = EmissionsChart.of(standingIn(), Pollutant.CO2E, UnitSystem.US, ChartTheme.light());
        assertFalse(co2e.textAlternative().contains(PlaceholderUse.WORDS));
    }

    @Test
    void nothingIsSaidWhereEveryFactorHasASource() {
        assertTrue(ResultTables.of(result, UnitSystem.US).stream().allMatch(t -> t.watermark().isEmpty()));
        ResultTable years = table(result, "emissions_by_year");
        assertEquals(years, years.marked());
        double driving = result.plans().get(0).air().get(0).emissions().of(EmissionSource.DRIVING).kg(Pollutant.NOX);
        assertEquals(driving, (Double) years.cell(rows(years, "pollutant", "NOx").get(0), "driving"), 1e-9);
    }
}
