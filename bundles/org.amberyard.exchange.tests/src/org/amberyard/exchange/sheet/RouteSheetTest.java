package org.amberyard.exchange.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.model.common.Month;
import org.amberyard.model.routes.Layover;
import org.amberyard.model.routes.Route;
import org.amberyard.model.routes.RoutesFactory;
import org.amberyard.model.routes.Run;
import org.amberyard.model.routes.RunKind;
import org.amberyard.model.routes.Trip;
import org.amberyard.model.site.ServiceCalendar;
import org.amberyard.model.site.SiteFactory;
import org.amberyard.model.validation.CalendarDays;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

/** Route sheets and lists of trips into the invented example. */
class RouteSheetTest extends ExampleSheets {
    private static final String HEADER = "route_id,body_type_required,school,am_depart,am_return,am_miles,midday_depart,midday_return,midday_miles,"
            + "pm_depart,pm_return,pm_miles,stops,max_riders,lift_required,elev_gain_ft_day,midday_layover\n";

    private SheetImport read(String text) throws Exception {
        return samples.recognised("sheet.csv", text, study);
    }

    private List<String> problems(String rows) throws Exception {
        return SampleSheets.problems(read(HEADER + rows), study);
    }

    private Route route(String name) {
        return study.getRoutes().stream().filter(r -> r.getName().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void aNewRouteHasItsRunsInTheOrderOfTheDay() throws Exception {
        SheetImport sheet = read(HEADER + "R77,C,Ashcombe,6:35a,07:45,32.2 km,11:30,12:05,7,2:20 pm,15:25,20,22,48,1,900,school\n");
        assertEquals("routes", sheet.kind().id());
        sheet.into(study);
        Route route = route("R77");
        assertEquals(List.of("AM", "Midday", "PM"), route.getRuns().stream().map(Run::getName).toList());
        assertEquals(List.of(RunKind.MORNING, RunKind.MIDDAY, RunKind.AFTERNOON), route.getRuns().stream().map(Run::getKind).toList());
        assertEquals(List.of(395, 690, 860), route.getRuns().stream().map(Run::getDepartureMin).toList());
        assertEquals(List.of(70.0, 35.0, 65.0), route.getRuns().stream().map(Run::getDurationMin).toList());
        assertEquals(32.2, route.getRuns().get(0).getDistanceKm(), 1e-9);
        assertEquals(48, route.getRiders());
        assertTrue(route.isLiftRequired());
        assertEquals(900 * 0.3048, route.getRuns().stream().mapToDouble(Run::getClimbM).sum(), 1e-6);
        assertEquals(List.of(Layover.SCHOOL, Layover.SCHOOL), route.getRuns().stream().limit(2).map(Run::getLayover).toList());
        assertEquals(Layover.YARD, route.getRuns().get(2).getLayover());
    }

    @Test
    void aKnownRouteIsChangedRunByRun() throws Exception {
        double before = route("R02").getRuns().get(1).getDistanceKm();
        List<SheetChange> changes = read(HEADER + "2,C,Fennick Primary,06:30,07:40,18,,,0,,,,26,61,0,,\n".replace("2,C", "R2,C")).into(study);
        assertEquals(List.of("run AM of route R02, Duration: 68 min → 70 min", "run AM of route R02, Distance: 17 mi → 18 mi"),
                changes.stream().map(SheetChange::words).toList());
        assertEquals(before, route("R02").getRuns().get(1).getDistanceKm(), 0, "the afternoon run is not on the sheet");
    }

    @Test
    void slipsOfRouteSheetsAreTold() throws Exception {
        assertEquals(List.of(
                "sheet.csv, row 2, column “am_depart”: R01 departs at 18:35 on its morning run; is that before or after noon? Write it as 6:35 am, or move it to the "
                        + "column of its run.",
                "sheet.csv, row 3, column “am_return”: R02 returns at 5:10, not after its departure at 6:30; mend one of the two.",
                "sheet.csv, row 4, column “am_miles”: The morning run of R03 has a departure but no distance; enter one above 0.",
                "sheet.csv, row 4, column “midday_layover”: “moon” must be depot, school or home.",
                "sheet.csv, row 5, column “pm_return”: A time is missing; enter one such as 6:35 or 2:05 pm.",
                "sheet.csv, row 6, column “body_type_required”: Body type is “E”; it must be one of A, B, C, D."),
                problems("""
                        R01,C,x,6:35 PM,07:39,15,,,0,14:20,15:24,15,24,58,0,310,depot
                        R02,C,x,06:30,5:10,17,,,0,14:20,15:25,16,26,61,0,280,depot
                        R03,C,x,06:30,7:10,,,,0,14:20,15:25,16,26,61,0,280,moon
                        R04,C,x,06:30,7:10,12,,,0,14:20,,16,26,61,0,280,depot
                        R05,E,x,06:30,7:10,12,,,0,14:20,15:20,16,26,61,0,280,depot
                        """));
    }

    /** Morning and afternoon side by side, but in rows of their own. */
    @Test
    void rowsOfARouteThatTellDifferentRunsBelongTogether() throws Exception {
        SheetImport sheet = read(HEADER + "R77,C,Ashcombe,6:35,7:45,20,,,0,,,,22,48,1,900,school\nR77,,,,,,,,0,14:20,15:25,25,30,,,900,\n");
        assertEquals(List.of(), sheet.preview(study).problems());
        sheet.into(study);
        Route route = route("R77");
        assertEquals(List.of(RunKind.MORNING, RunKind.AFTERNOON), route.getRuns().stream().map(Run::getKind).toList());
        assertEquals(List.of(22, 30), route.getRuns().stream().map(Run::getStops).toList());
        assertEquals(List.of(400, 500), route.getRuns().stream().map(r -> (int) Math.round(r.getClimbM() / 0.3048)).toList());
        assertTrue(problems("R77,C,x,6:35,7:45,20,,,0,,,,22,48,1,,\nR77,C,x,6:36,7:45,20,,,0,,,,22,48,1,,\n").get(0)
                .contains("“R77” stands in rows 2 and 3; they differ in am_depart. Keep one of them."));
    }

    @Test
    void aRowMayHoldARun() throws Exception {
        SheetImport sheet = read("Route,AM/PM,Depart,Return,Miles\nR77,PM,2:20 pm,3:25 pm,25\nR77,AM,6:35a,7:45a,20\n");
        assertEquals("routes", sheet.kind().id());
        sheet.into(study);
        assertEquals(List.of(395, 860), route("R77").getRuns().stream().map(Run::getDepartureMin).toList());
        assertEquals(List.of("sheet.csv, row 2, column “AM/PM”: “evening” must be AM, midday or PM.",
                "sheet.csv, row 3, column “Miles”: The morning run of R78 has a departure but no distance; enter one above 0."),
                read("Route,AM/PM,Depart,Return,Miles\nR77,evening,2:20 pm,3:25 pm,25\nR78,AM,6:35a,7:45a,\n").preview(study).problems().stream()
                        .map(ImportProblem::toString).toList());
    }

    /** A workbook with a sheet for the morning and one for the afternoon; the second adds its runs to the routes of the first. */
    @Test
    void sheetsOfAMorningAndAnAfternoonMakeOneRoute() throws Exception {
        Path book = samples.workbook("routes.xlsx", b -> {
            fill(b.createSheet("AM routes"), "Route|Depart|Return|Miles|Stops", "R77|6:35|7:45|20|22");
            fill(b.createSheet("PM routes"), "Route|Depart|Return|Miles|Stops", "R77|14:20|15:25|25|30");
        });
        for (Sheet sheet : SheetReader.read(book, ReadingProgress.NONE)) {
            SheetImport made = SheetImport.recognised(sheet, study).orElseThrow();
            assertEquals("routes", made.kind().id());
            assertEquals(List.of(), made.preview(study).problems());
            made.into(study);
            assertEquals(List.of(), made.preview(study).changes(), "a second import changes nothing");
        }
        assertEquals(List.of(RunKind.MORNING, RunKind.AFTERNOON), route("R77").getRuns().stream().map(Run::getKind).toList());
        assertEquals(List.of(22, 30), route("R77").getRuns().stream().map(Run::getStops).toList());
    }

    private static void fill(XSSFSheet sheet, String... rows) {
        for (String row : rows) {
            Row made = sheet.createRow(sheet.getPhysicalNumberOfRows());
            for (String cell : row.split("\\|")) {
                made.createCell(Math.max(0, made.getLastCellNum())).setCellValue(cell);
            }
        }
    }

    @Test
    void namesOfRoutesMayEndInThePartOfTheDay() throws Exception {
        SheetImport sheet = read("Route,Depart,Return,Miles\nR77 AM,6:35,7:45,20\nR77-PM,2:20 pm,3:25 pm,25\nR01 AM,6:30,7:39,16\n");
        assertEquals(List.of(), sheet.preview(study).problems());
        sheet.into(study);
        assertEquals(List.of(395, 860), route("R77").getRuns().stream().map(Run::getDepartureMin).toList());
        assertEquals(390, route("R01").getRuns().get(0).getDepartureMin());
        assertTrue(study.getRoutes().stream().noneMatch(r -> r.getName().endsWith("M")));
    }

    @Test
    void everyProblemOfARowIsTold() throws Exception {
        assertEquals(List.of("sheet.csv, row 2, column “am_miles”: “3,5 mi” must be a number in mi or km; decimals stand behind a point here: write 3.5 mi.",
                "sheet.csv, row 2, column “am_depart”: “early” must be a time such as 6:35 or 2:05 pm.",
                "sheet.csv, row 2, column “am_return”: “late” must be a time such as 6:35 or 2:05 pm.",
                "sheet.csv, row 2, column “elev_gain_ft_day”: “high” must be a number in ft or m.",
                "sheet.csv, row 2, column “stops”: “many” must be a number.",
                "sheet.csv, row 2, column “midday_layover”: “moon” must be depot, school or home."),
                problems("R01,,,early,late,\"3,5 mi\",,,,,,,many,,,high,moon\n"));
        assertEquals(List.of("sheet.csv, row 2, column “route_id”: The row has no name in “route_id”; enter one, or delete the row.",
                "sheet.csv, row 2, column “lift_required”: Lift is “maybe”; it must be yes or no."), problems(",,,,,,,,,,,,,,maybe,,\n"));
    }

    @Test
    void aMissingColumnOfReturnsIsToldOnce() throws Exception {
        assertEquals(List.of("sheet.csv, row 1: A column “Return” is missing: End of the run of a row of its own. Name a column so, or choose the one that "
                + "holds it."), read("Route,Period,Depart,Miles\nR99,AM,6:35a,11\nR99,PM,2:20p,11\n").preview(study).problems().stream()
                        .map(ImportProblem::toString).toList());
        assertEquals(List.of(), read("Route,Period,Depart,Arrive,Miles\nR99,AM,6:35a,7:35a,11\n").preview(study).problems());
    }

    @Test
    void severalRunsOfAKindAreNotTakenForOne() throws Exception {
        Run second = EcoreUtil.copy(route("R01").getRuns().get(0));
        route("R01").getRuns().add(1, second);
        assertTrue(problems("R01,C,x,6:35,07:39,15,,,0,14:20,15:24,15,24,58,0,310,depot\n").get(0)
                .contains("R01 has 2 morning runs in the study, of which the sheet tells one"));
    }

    @Test
    void aClimbNeedsDistances() throws Exception {
        route("R01").getRuns().forEach(r -> r.setDistanceKm(0));
        assertEquals(List.of("sheet.csv, row 2, column “elev_gain_ft_day”: The runs of R01 have no distance by which the climb could be parted; enter "
                + "distances, or clear the climb."), problems("R01,,,,,,,,,,,,,,,310,\n"));
    }

    /** Of a year only the days of its months count. */
    @Test
    void aRouteIsDrivenOnTheDaysOfItsMonths() {
        Run run = RoutesFactory.eINSTANCE.createRun();
        run.setDistanceKm(2);
        ServiceCalendar calendar = SiteFactory.eINSTANCE.createServiceCalendar();
        Month.VALUES.forEach(m -> calendar.eSet(CalendarDays.field(m), m.ordinal() + 1));
        run.setCalendar(calendar);
        Route route = RoutesFactory.eINSTANCE.createRoute();
        route.getRuns().add(run);
        assertEquals(2 * 78, RouteYear.km(route), 1e-9);
    }

    @Test
    void tripsAreAddedWithTheirBus() throws Exception {
        SheetImport sheet =
                read("trip_id,date,kind,depart,duration_h,round_trip_miles,seats_needed,assigned_bus\nT900,9/3/25,athletics away,15:20,4.3,61,44,B21\n");
        assertEquals("trips", sheet.kind().id());
        sheet.into(study);
        Trip trip = study.getTrips().get(study.getTrips().size() - 1);
        assertEquals("2025-09-03", trip.getDate());
        assertEquals(920, trip.getDepartureMin());
        assertEquals(61 * 1.609344, trip.getRoundTripKm(), 1e-9);
        assertEquals("B21", trip.getBus().getName());
        List<String> problems = read("trip_id,date,depart,duration_h,round_trip_miles,assigned_bus\nT901,13/13/25,15:20,4,61,B99\n").preview(study)
                .problems().stream().map(ImportProblem::toString).toList();
        assertEquals(2, problems.size(), problems.toString());
        assertTrue(problems.get(0).contains("“13/13/25” must be a date such as"), problems.toString());
        assertTrue(problems.get(1).contains("“B99” is no bus of the study"), problems.toString());
    }
}
