package org.amberyard.exchange.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.model.common.Quality;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.prices.PricePath;
import org.amberyard.model.routes.Trip;
import org.amberyard.model.study.Study;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** What was found out on a copy, done to the study itself. */
class SheetEditsTest extends ExampleSheets {
    private static final String TRIPS = "trip_id,date,kind,depart,duration_h,round_trip_miles,seats_needed,assigned_bus\n";

    private SheetImport.Preview preview(String text) throws Exception {
        return SampleSheets.preview(samples.text("table.csv", text), study);
    }

    private String text(Study of) throws Exception {
        Path file = folder.resolve("s.amberyard");
        StudyFile.save(of, file);
        return Files.readString(file);
    }

    /** New elements, new parts of known ones, references and sources, each as if it had been read into the study itself. */
    @Test
    void theStudyBecomesWhatTheCopyHadBecome() throws Exception {
        SheetImport.Preview routes = preview("route,am_depart,am_return,am_miles,midday_depart,midday_return,midday_miles,stops\n"
                + "R77,6:35,7:45,20,11:30,12:05,7,22\nR01,6:36,7:46,21,11:31,12:06,8,23\n");
        assertEquals(List.of(), routes.problems());
        String before = text(study);
        routes.into(study);
        assertNotEquals(before, text(study));
        assertEquals(List.of("AM", "Midday", "PM"), study.getRoutes().get(0).getRuns().stream().map(r -> r.getName()).toList());
        assertEquals(23, study.getRoutes().get(0).getRuns().get(1).getStops());
        assertSame(study.getCalendars().get(0), study.getRoutes().get(study.getRoutes().size() - 1).getRuns().get(0).getCalendar());
        SheetImport.Preview trips = preview(TRIPS + "T900,9/13/25,athletics away,15:20,4.3,61,44,B21\n");
        trips.into(study);
        Trip trip = study.getTrips().get(study.getTrips().size() - 1);
        assertSame(bus("B21"), trip.getBus());
        assertEquals(List.of(), preview(TRIPS + "T900,9/13/25,athletics away,15:20,4.3,61,44,B21\n").changes());
    }

    private Bus bus(String name) {
        return study.getBuses().stream().filter(b -> b.getName().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void aStudyThatIsBuiltInAnotherWayIsLeftAlone() throws Exception {
        SheetImport.Preview found = preview("Bus,Date,Odometer\nB01,2026-06-30,200000\n");
        study.getBuses().remove(bus("B24"));
        assertThrows(IllegalStateException.class, () -> found.into(study));
    }

    @Test
    void aPreviewCanBeStopped() throws Exception {
        SheetImport sheet = SheetImport.recognised(SampleSheets.only(samples.text("a.csv", "Bus,Date,Odometer\nB01,2026-06-30,200000\n")), study).orElseThrow();
        assertThrows(CancellationException.class, () -> sheet.preview(study, new ReadingProgress() {
            @Override
            public void reached(String file, long rows) {
                // Only whether it is to go on is asked.
            }

            @Override
            public boolean isStopped() {
                return true;
            }
        }));
    }

    /** Eight thousand trips, each with a bus. */
    @Test
    @Timeout(30)
    void thousandsOfRowsTakeSeconds() throws Exception {
        StringBuilder rows = new StringBuilder(TRIPS);
        for (int i = 0; i < 8000; i++) {
            rows.append("K").append(i).append(",9/13/25,athletics away,15:20,4.3,61,44,B21\n");
        }
        SheetImport.Preview trips = preview(rows.toString());
        assertEquals(8000, trips.changes().stream().filter(SheetChange::isAddition).count());
        assertEquals(8 * 8000, trips.changes().size(), "each with seven values");
        trips.into(study);
        assertEquals("K7999", study.getTrips().get(study.getTrips().size() - 1).getName());
    }

    @Test
    void pointsThatTheTableLacksAreRemovedAndTold() throws Exception {
        int base = study.getSettings().getBaseYear();
        preview("Fiscal year,Diesel\n" + base + ",4\n" + (base + 1) + ",4.2\n" + (base + 5) + ",5\n").into(study);
        SheetImport.Preview less = preview("Fiscal year,Diesel\n" + base + ",4\n" + (base + 5) + ",5\n");
        assertEquals(List.of("price point " + (base + 1) + " of fuel price diesel, Factor: 1.05 → nothing"),
                less.changes().stream().map(SheetChange::words).toList());
        less.into(study);
        PricePath diesel =
                study.getPrices().stream().filter(p -> p instanceof FuelPrice f && f.getFuel().getLiteral().equals("diesel")).findFirst().orElseThrow();
        assertEquals(List.of(base, base + 5), diesel.getPoints().stream().map(p -> p.getYear()).toList());
    }

    /** A new element is shown cell by cell, as it stands in the file and as the study keeps it; an empty cell says nothing. */
    @Test
    void thePreviewShowsTheValuesOfNewElements() throws Exception {
        assertEquals(List.of("trip T900 is new", "trip T900, Kind: “athletics away” → athletics away", "trip T900, Date: “9/13/25” → 2025-09-13",
                "trip T900, Departure: “3:20 pm” → 15:20", "trip T900, Time away: “4.3” → 4.3 h", "trip T900, Round trip: “61 km” → 37.904 mi",
                "trip T900, Seats: “44” → 44", "trip T900, Bus: “B21” → B21"),
                words(TRIPS + "T900,9/13/25,athletics away,3:20 pm,4.3,61 km,44,B21\n"));
        assertEquals(List.of("trip T900 is new", "trip T900, Date: “9/13/25” → 2025-09-13"), words("trip_id,date,seats\nT900,9/13/25,\n"));
        assertEquals(List.of("bus Z99 is new", "bus Z99, Chassis model year: “2012” → 2012", "bus Z99, Vehicle type: Diesel C 2010-2015"),
                words("Unit,Body,Fuel,Year\nZ99,C,diesel,2012\n"));
        assertEquals(List.of("route R99 is new", "run AM of route R99 is new", "run AM of route R99, Departure: “6:35” → 6:35",
                "run AM of route R99, Duration: 70 min", "run AM of route R99, Distance: “20” → 20 mi", "run AM of route R99, Climb: “310” → 310 ft"),
                words("route,am_depart,am_return,am_miles,climb\nR99,6:35,7:45,20,310\n"));
        int year = study.getSettings().getBaseYear() + 7;
        assertEquals(List.of("price point " + year + " of fuel price diesel is new",
                "price point " + year + " of fuel price diesel, Factor: “4.2” → 1.05"),
                words("Fiscal year,Diesel\n" + (year - 7) + ",4\n" + year + ",4.2\n").stream().filter(w -> w.contains("" + year)).toList());
    }

    private List<String> words(String table) throws Exception {
        SheetImport.Preview preview = preview(table);
        assertEquals(List.of(), preview.problems());
        return preview.changes().stream().map(SheetChange::words).toList();
    }

    /** An odometer has been read, a year of retirement is a plan. */
    @Test
    void plansAreNotMeasured() throws Exception {
        String header = "bus_id,role,body_type,fuel,chassis_model_year,engine_model_year,in_service_fy,odometer_end_fy,planned_retire_fy\n";
        preview(header + "B01,route,C,diesel,2008,2007,2008,123456,2031\nB99,spare,C,diesel,2012,2011,2012,152000,2031\n").into(study);
        assertEquals(Quality.MEASURED, quality(bus("B01"), "odometerKm"));
        assertEquals(Quality.ASSUMED, quality(bus("B01"), "plannedRetirementYear"));
        assertEquals(Quality.MEASURED, quality(bus("B99"), "*"));
        assertEquals(Quality.ASSUMED, quality(bus("B99"), "plannedRetirementYear"));
    }

    private static Quality quality(Sourced element, String field) {
        return element.getSources().stream().filter(n -> n.getField().equals(field)).findFirst().orElseThrow().getQuality();
    }
}
