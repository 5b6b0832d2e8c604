package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.TripCover;
import org.amberyard.core.plan.TripInput;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.testsupport.SampleCover;
import org.amberyard.testsupport.SampleDistrict;
import org.junit.jupiter.api.Test;

/** Two plans of three buses, the third a spare; a short trip that no one is fixed for, and a long one for the first bus. */
class CoverTablesTest {
    private final StudyResult result = SampleDistrict.evaluated(SampleCover.study());

    private ResultTable table(String name) {
        return ResultTables.of(result, UnitSystem.METRIC).stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void everyTripOfEveryPlanHasARow() {
        ResultTable trips = table("trip_cover");
        assertEquals(4, trips.rows().size());
        assertEquals(List.of("Like-for-like diesel", 2035, "Museum", "field trip", "2026-01-14", "school day", 30.0, 3.0, 40),
                trips.rows().get(0).subList(0, 9));
        assertNull(trips.cell(0, "assigned"));
        assertNull(trips.cell(0, "assigned_answer"));
        assertEquals("B01", trips.cell(1, "assigned"));
        assertEquals("can", trips.cell(1, "assigned_answer"));
        assertEquals("not enough charge", trips.cell(3, "assigned_answer"));
    }

    @Test
    void whoCanAndWhyNotAreThoseOfTheCover() {
        ResultTable trips = table("trip_cover");
        for (int row = 0; row < 4; row++) {
            TripCover.Answer answer = result.tripCovers().get(row / 2).answers().get(row % 2);
            assertEquals(answer.able().size(), trips.cell(row, "covering"));
            assertEquals(String.join(", ", answer.able().stream().map(p -> "B0" + (p.place() + 1)).toList()),
                    trips.cell(row, "covering_places"));
        }
        assertEquals("B03, B01, B02", trips.cell(1, "covering_places"), "the spare first");
        assertEquals("", trips.cell(1, "why_not"));
        assertEquals("2 not enough charge", trips.cell(3, "why_not"));
        assertEquals(0, trips.cell(3, "covering_electric"));
    }

    @Test
    void sparesAreListedWithTheirLongestRoute() {
        ResultTable spares = table("spare_cover");
        assertEquals(List.of("B03", "B03"), IntStream.range(0, 2).mapToObj(r -> spares.cell(r, "place")).toList());
        assertEquals(3, spares.cell(0, "covered"));
        assertEquals("R03", spares.cell(0, "longest_covered"));
        assertEquals(2 * 78.0, spares.cell(0, "longest_covered_distance"));
        assertNull(spares.cell(0, "longest_not_covered"));
        assertNull(spares.cell(0, "longest_not_covered_distance"));
        assertEquals(0, spares.cell(0, "routes_without_spare"));
        assertEquals("", spares.cell(0, "routes_without_spare_names"));
    }

    /** Of each plan a row that counts over all years, then one for each year, which agree with the cover of that year. */
    @Test
    void whatIsUncoveredIsCountedByYearAndOnTop() {
        ResultTable years = table("cover_by_year");
        int span = result.input().years();
        assertEquals(2 * (span + 1), years.rows().size());
        for (int plan = 0; plan < 2; plan++) {
            int top = plan * (span + 1);
            assertNull(years.cell(top, "year"));
            assertEquals("uncovered: 1 route without a bus", years.cell(top, "answer"));
            assertEquals("R03", years.cell(top, "routes_without_bus_names"));
            for (int year = 0; year < span; year++) {
                TripCover cover = TripCover.of(result, plan, year);
                assertEquals(result.input().baseYear() + year, years.cell(top + 1 + year, "year"));
                assertEquals(cover.uncovered().size(), years.cell(top + 1 + year, "uncovered_trips"));
            }
        }
    }

    @Test
    void whatIsUncoveredIsNamed() {
        List<TripInput> far = result.input().trips().stream().map(t -> new TripInput(t.name(), t.kind(), t.date(), t.day(), t.departureMin(),
                t.hours(), t.km(), "D", t.seats(), t.stopsEachWay(), t.assigned())).toList();
        StudyResult none = SampleDistrict.evaluated(SampleCover.withTrips(far));
        ResultTable years = ResultTables.of(none, UnitSystem.METRIC).stream().filter(t -> t.name().equals("cover_by_year")).findFirst().orElseThrow();
        assertEquals("uncovered: 1 route without a bus, 2 trips", years.cell(0, "answer"));
        assertEquals("Museum, Final", years.cell(0, "uncovered_trip_names"));
        assertEquals(2, years.cell(1, "uncovered_trips"));
    }
}
