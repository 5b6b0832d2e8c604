package org.amberyard.exchange.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.model.common.Quality;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetPackage.Literals;
import org.amberyard.model.fleet.Ownership;
import org.amberyard.model.fleet.Role;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.CombustionType;
import org.amberyard.model.vehicles.Fuel;
import org.amberyard.model.vehicles.VehicleType;
import org.amberyard.study.begin.AssumedTypes;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.junit.jupiter.api.Test;

/** Lists of buses into the invented example. */
class BusSheetTest extends ExampleSheets {
    private static final String HEADER = "bus_id,vin,role,body_type,fuel,assigned_route,chassis_model_year,engine_model_year,in_service_fy,"
            + "odometer_start_fy,odometer_end_fy,annual_miles,mpg_driving,planned_retire_fy\n";

    private SheetImport.Preview preview(String rows) throws Exception {
        return SampleSheets.preview(samples.text("fleet.csv", HEADER + rows), study);
    }

    private static List<String> words(SheetImport.Preview preview) {
        return preview.problems().stream().map(ImportProblem::toString).toList();
    }

    private Bus bus(String name) {
        return study.getBuses().stream().filter(b -> b.getName().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void aListAddsAndUpdatesByNumber() throws Exception {
        Path list = samples.text("fleet.csv", HEADER + "b7,,route,C,diesel,R07,2011,2010,2011,100000,107920,\"8,500\",6.3,\n"
                + "B99,,spare,C,diesel,,2012,2011,2012,150000,152000,2000,6.1,2031\n");
        SheetImport read = SheetImport.recognised(SampleSheets.only(list), study).orElseThrow();
        assertEquals("buses", read.kind().id());
        bus("B07").setName("B7");
        List<SheetChange> changes = read.with(read.mapping()).into(study);
        assertEquals(List.of("bus B99 is new"), changes.stream().filter(SheetChange::isAddition).map(SheetChange::words).toList());
        Bus added = bus("B99");
        assertEquals(Role.SPARE, added.getRole());
        assertEquals("C", added.getType().getBodyType().getLiteral());
        assertEquals(152_000 * 1.609344, added.getOdometerKm(), 1e-6);
        assertEquals(2000 * 1.609344, added.getOtherKmPerYear(), 1e-6);
        assertEquals(6.1 * 1.609344 / 3.785411784, added.getMeasuredKmPerL(), 1e-9);
        assertEquals(2031, added.getPlannedRetirementYear());
        assertEquals("fleet.csv", added.getSources().get(0).getCitation());
        assertEquals(107_920 * 1.609344, bus("B7").getOdometerKm(), 1e-6);
        assertEquals(8500 * 1.609344 - RouteYear.km(bus("B7").getRoute()), bus("B7").getOtherKmPerYear(), 1e-6);
    }

    /** A list of a whole fleet takes routes from spares and lets the steps of plans follow the bodies that it gives. */
    @Test
    void routesAndStepsFollowWhatAListSays() throws Exception {
        Replacement step = study.getPlans().get(1).getReplacements().stream().filter(r -> r.getBus() == bus("B01")).findFirst().orElseThrow();
        assertEquals("Electric C 150", step.getNewType().getName());
        Path list = samples.text("fleet.csv", "Bus,Role,Body,Fuel,Route,Model year\nB01,route,A,gas,R15,2012\nB02,spare,C,diesel,,2009\n"
                + "B03,,C,diesel,,2009\nB15,spare,A,diesel,,2009\n");
        SheetImport read = SheetImport.recognised(SampleSheets.only(list), study).orElseThrow();
        SheetImport.Preview preview = read.preview(study);
        assertEquals(List.of(), words(preview));
        assertTrue(preview.remarks().contains("Row 3: B02 is no longer on route R02; its row says spare and names no route."), preview.remarks().toString());
        read.into(study);
        assertNull(bus("B02").getRoute());
        assertEquals("R03", bus("B03").getRoute().getName(), "nothing is said of its role");
        assertEquals("Electric A 118", step.getNewType().getName());
    }

    /** Headers and words as districts write them; what is not told stays empty and is no zero. */
    @Test
    void whatGrantTablesAskForIsRead() throws Exception {
        Path list = samples.text("fleet.csv", """
                Bus #,Capacity,GVWR,Owner,Lien,Days/wk,Engine Serial No,EPA Engine Family
                B01,77,"29,800",District,N,5,E-1,FAM1
                B02,71,13500 kg,Lease,y,4.5,,
                B03,,,Contractor,unknown,,,
                B04,,,?,,,,
                """);
        study.getBuses().subList(2, 4).forEach(BusSheetTest::forget);
        SheetImport read = SheetImport.recognised(SampleSheets.only(list), study).orElseThrow();
        assertEquals("buses", read.kind().id());
        read.into(study);
        assertEquals("77, 13517, owned, no, 5.0, E-1, FAM1", told(bus("B01")));
        assertEquals("71, 13500, leased, yes, 4.5, D08-4174, invented D08", told(bus("B02")));
        assertEquals("null, 0, contractor, not told, null, null, null", told(bus("B03")));
        assertEquals("null, 0, not told, not told, null, null, null", told(bus("B04")));
    }

    /** Names of owners and lenders were never read; they refuse no list. */
    @Test
    void anOwnerWhoIsNamedIsARemarkAndStaysNotTold() throws Exception {
        Path list = samples.text("fleet.csv", "Bus #,Role,Owner,Lien\nB01,route,First Student,\nB02,route,First Student,First Bank\nB03,route,district,n\n");
        study.getBuses().subList(0, 3).forEach(BusSheetTest::forget);
        SheetImport read = SheetImport.recognised(SampleSheets.only(list), study).orElseThrow();
        List<String> remarks = read.preview(study).remarks();
        assertTrue(remarks.contains("“Owned by”: “First Student” in 2 rows is none of not told, owned, leased, contractor, and is not taken in."),
                remarks.toString());
        assertTrue(remarks.contains("“Lien”: “First Bank” in 1 row is none of not told, yes, no, and is not taken in."), remarks.toString());
        read.into(study);
        assertEquals(List.of(Ownership.NOT_TOLD, Ownership.NOT_TOLD, Ownership.OWNED), study.getBuses().subList(0, 3).stream().map(Bus::getOwnership).toList());
    }

    /** Packs and tanks have a capacity, too. */
    @Test
    void aCapacityIsOneOfSeatsOnlyWhereItLooksSo() throws Exception {
        assertEquals(Optional.of("Capacity"), headerOfSeats("Capacity", "77", "71"));
        assertEquals(Optional.empty(), headerOfSeats("Capacity", "155", "220"));
        assertEquals(Optional.empty(), headerOfSeats("Capacity", "60 gal", "100 gal"));
        assertEquals(Optional.empty(), headerOfSeats("Tank capacity (gal)", "60", "100"));
        assertEquals(Optional.of("Seating capacity"), headerOfSeats("Seating capacity", "155", "220"));
    }

    private Optional<String> headerOfSeats(String header, String one, String other) throws Exception {
        Path list = samples.text("fleet.csv", "Bus #,Role,%s\nB01,route,%s\nB02,route,%s\n".formatted(header, one, other));
        return SheetImport.of(new BusSheet(), SampleSheets.only(list), study).header("seats");
    }

    private static final String MIXED = "Bus,Role,Body,Fuel,Model year,In service\nM1,spare,D,Gas,2015,2015\nM2,spare,D,gasoline,2016,2016\n"
            + "M3,spare,A,electric,2024,2024\nM4,spare,C,diesl,2015,2015\n";

    /** A fuel that the study lacks is no slip of a pen, and its type can come with the list, marked as assumed. */
    @Test
    void typesThatTheStudyLacksComeWithTheListWhereThatIsWanted() throws Exception {
        SheetImport read = SheetImport.of(new BusSheet(), SampleSheets.only(samples.text("fleet.csv", MIXED)), study);
        List<String> problems = read.preview(study).problems().stream().map(ImportProblem::toString).toList();
        assertTrue(problems.contains("fleet.csv, row 2, column “Body”: The study has no vehicle type with body “D” and fuel “Gas”; mend the row, or add the "
                + "type on the page of vehicle types, or have it added here with assumed figures."), problems.toString());
        assertTrue(problems.stream().anyMatch(p -> p.contains("fuel “diesl”; mend the row, or add the type on the page of vehicle types. Is “diesel” meant?")),
                problems.toString());
        int before = study.getVehicleTypes().size();
        SheetAmendments wanted = SheetAmendments.NONE.with(read.sheet(), 5, 3, "diesel").addingTypes(true);
        read.amended(wanted).into(study);
        assertEquals(List.of("Gasoline D"),
                study.getVehicleTypes().subList(before, study.getVehicleTypes().size()).stream().map(VehicleType::getName).toList());
        CombustionType added = (CombustionType) study.getVehicleTypes().get(before);
        assertEquals(added, bus("M1").getType());
        assertEquals(added, bus("M2").getType());
        assertEquals(added, added.getSuccessor());
        assertEquals("Electric A 118", bus("M3").getType().getName(), "what the study has is taken");
        assertTrue(added.getCurbMassKg() > 8200 && added.getFuel() == Fuel.GASOLINE);
        assertEquals(Quality.ASSUMED, SourceNotes.find(added, SourceNotes.EVERY_FIELD).orElseThrow().getQuality());
        assertEquals(AssumedTypes.SOURCE, SourceNotes.find(added, SourceNotes.EVERY_FIELD).orElseThrow().getCitation());
    }

    private static void forget(Bus bus) {
        List.of(Literals.BUS__SEATS, Literals.BUS__GVWR_KG, Literals.BUS__OWNERSHIP, Literals.BUS__LIEN, Literals.BUS__DAYS_PER_WEEK,
                Literals.BUS__ENGINE_SERIAL, Literals.BUS__ENGINE_FAMILY).forEach(bus::eUnset);
    }

    private static String told(Bus bus) {
        return bus.getSeats() + ", " + Math.round(bus.getGvwrKg() == null ? 0 : bus.getGvwrKg()) + ", " + bus.getOwnership() + ", " + bus.getLien()
                + ", " + bus.getDaysPerWeek() + ", " + bus.getEngineSerial() + ", " + bus.getEngineFamily();
    }

    @Test
    void aPreviewLeavesTheStudyAsItIs() throws Exception {
        String before = text(study);
        assertEquals(List.of(), words(preview("B01,,spare,C,diesel,,2012,2011,2012,,,,6.1,2031\n")));
        assertEquals(before, text(study));
    }

    private String text(Study of) throws Exception {
        Path file = folder.resolve("s.amberyard");
        StudyFile.save(of, file);
        return Files.readString(file);
    }

    @Test
    void everyProblemIsToldWithRowColumnValueAndRemedy() throws Exception {
        List<String> problems = words(preview("""
                B01,,route,C,diesel,R01,2008,2007,2008,84774,89724,4950,6.2,2027
                ,,route,C,diesel,R02,2009,2008,2009,87382,92827,5445,6.2,2027
                b1,,route,C,diesel,R01,2008,2007,2008,84774,89724,4951,6.2,2027
                B03,,rute,C,diesel,R03,2009,2008,2009,92827,87382,5940,6.2,2027
                B04,,route,C,steam,R04,2009.5,2008,2009,,x1,5940,6.2,2027
                B05,,route,C,diesel,R99,2009,2008,2009,,87382 kg,-5,6.2,2027
                """));
        assertEquals(List.of(
                "fleet.csv, row 3, column “bus_id”: The row has no name in “bus_id”; enter one, or delete the row.",
                "fleet.csv, row 4, column “bus_id”: “b1” stands in rows 2 and 4; they differ in annual_miles. Keep one of them.",
                "fleet.csv, row 5, column “role”: Role is “rute”; it must be one of route, spare, activity.",
                "fleet.csv, row 5, column “odometer_end_fy”: B03 ends below its start by 5,445 mi: reversed, rolled over or a new odometer? "
                        + "Mend it, or clear the reading of a year before.",
                "fleet.csv, row 6, column “chassis_model_year”: “2009.5” must be a whole number.",
                "fleet.csv, row 6, column “odometer_end_fy”: “x1” must be a number in mi or km.",
                "fleet.csv, row 6, column “body_type”: The study has no vehicle type with body “C” and fuel “steam”; mend the row, or add the type on the "
                        + "page of vehicle types.",
                "fleet.csv, row 7, column “odometer_end_fy”: “87382 kg” must be a number in mi or km.",
                "fleet.csv, row 7, column “annual_miles”: “-5” must be a distance of at least 0."),
                problems.stream().filter(p -> !p.contains("R99")).toList());
        assertTrue(problems.stream().anyMatch(p -> p.startsWith("fleet.csv, row 7, column “assigned_route”: “R99” is no route of the study; it has R01, R02")),
                problems.toString());
    }

    @Test
    void nothingIsImportedWhereOneCellIsWrong() throws Exception {
        String before = text(study);
        SheetImport read = SheetImport.recognised(SampleSheets.only(samples.text("fleet.csv", HEADER
                + "B98,,spare,C,diesel,,2012,2011,2012,,,,6.1,2031\nB99,,spare,C,diesel,,2012,2011,2012,,,,six,2031\n")), study).orElseThrow();
        assertThrows(ImportException.class, () -> read.into(study));
        assertEquals(before, text(study));
    }

    /** Body letters as people write them, and names of vehicle types under the same header. */
    @Test
    void bodiesMayNameVehicleTypes() throws Exception {
        SheetImport letters = SheetImport.recognised(SampleSheets.only(samples.text("fleet.csv", "Bus,Body,Fuel\nB01,Type C,diesel\n")), study).orElseThrow();
        assertEquals(List.of(), words(letters.preview(study)));
        String name = bus("B01").getType().getName();
        SheetImport names = SheetImport.recognised(SampleSheets.only(samples.text("fleet.csv", "Bus,Body,Model year\nB99," + name + ",2012\nB98,"
                + name.toLowerCase() + ",2012\n")), study).orElseThrow();
        assertEquals(Optional.of("Body"), names.header("type"));
        SheetImport mixed = SheetImport.recognised(SampleSheets.only(samples.text("fleet.csv", "Bus,Role,Body,Fuel\nB97,spare," + name
                + ",diesel\nB01,spare,C,diesel\nB02,spare,Chassis 7,diesel\nB03,spare," + name
                + ",gasoline\nB04,spare,C,diesle\n")), study).orElseThrow();
        assertEquals(Optional.of("Body"), mixed.header("bodyType"));
        List<String> told = words(mixed.preview(study));
        assertEquals(3, told.size(), told.toString());
        assertTrue(told.get(1).endsWith("column “Fuel”: “" + name + "” runs on diesel, but the row says “gasoline”; mend one of the two."), told.toString());
        assertTrue(told.get(2).endsWith("or add the type on the page of vehicle types. Is “diesel” meant?"), told.toString());
        assertTrue(told.get(0).startsWith("fleet.csv, row 4, column “Body”: “Chassis 7” is neither a body type, which are A, B, C, D, nor the name of a "
                + "vehicle type of the study, which has "), told.toString());
    }

    @Test
    void aVinThatASpreadsheetHasShortenedIsRefused() throws Exception {
        List<String> told = words(preview("B01,1.23457E+16,route,C,diesel,R01,2008,2007,2008,84774,89724,5500,6.2,2027\n"));
        assertEquals(List.of("fleet.csv, row 2, column “vin”: “1.23457E+16” is what spreadsheets make of a long number, and its digits are lost; format the "
                + "column as text, and enter it anew."), told);
    }

    @Test
    void aNewBusWithTheNumberOfAnotherIsNoted() throws Exception {
        SheetImport.Preview preview = preview("Bus 07,,spare,C,diesel,,2011,2010,2011,,,,,\nBus 7001,,spare,C,diesel,,2011,2010,2011,,,,,\n");
        assertTrue(preview.remarks().contains("Row 2: “Bus 07” is taken for a new bus, though “B07” of the study has the same number; write it so where it is "
                + "the same bus."), preview.remarks().toString());
        assertTrue(preview.remarks().stream().noneMatch(r -> r.startsWith("Row 3: “Bus 7001”")));
    }

    /** One known header of many is by chance. */
    @Test
    void aTableOfSomethingElseIsNotTakenForBuses() throws Exception {
        assertTrue(SheetImport.recognised(SampleSheets.only(samples.text("t.csv", "dish,season,colour\nsoup,all,red\n")),
                study).isEmpty());
    }

    /** A wrong cell does not hide what is wrong with another field, only what may follow from it. */
    @Test
    void rulesHoldForRowsWithAWrongCell() throws Exception {
        List<String> told = words(preview("B98,,spare,C,diesel,,2012,2011,2031,,5000,,six,\n"));
        assertEquals(2, told.size(), told.toString());
        assertTrue(told.get(0).contains("column “mpg_driving”: “six” must be a number in mpg or km/L"), told.toString());
        assertTrue(told.get(1).contains("column “odometer_end_fy”: Bus B98: odometer is 5,000 mi, but the fleet only grows by it"), told.toString());
    }

    /** What only the rules of the study can tell is told at the row too. */
    @Test
    void rulesOfTheStudyHoldForRows() throws Exception {
        List<String> problems = words(preview("B99,,route,A,electric,R01,2027,2027,2027,,,,,\n"));
        assertEquals(1, problems.size(), problems.toString());
        assertTrue(problems.get(0).startsWith("fleet.csv, row 2"), problems.toString());
    }

    /** Five hundred buses below a title, in miles and kilometres, with totals and repeated headers, and thirty planted errors. */
    @Test
    void thirtyErrorsInFiveHundredBusesAreToldInOnePass() throws Exception {
        Map<Integer, String> planted = new TreeMap<>();
        Path list = samples.workbook("fleet.xlsx", book -> fill(book.createSheet("Buses"), planted));
        SheetImport.Preview preview = SampleSheets.preview(list, study);
        Map<Integer, String> found = preview.problems().stream().collect(Collectors.toMap(ImportProblem::row, ImportProblem::message, (a, b) -> a + b,
                TreeMap::new));
        assertEquals(30, planted.size());
        assertEquals(planted.keySet(), found.keySet());
        found.forEach((row, message) -> assertTrue(message.contains(planted.get(row)), row + ": " + message));
        assertTrue(preview.problems().stream().allMatch(p -> p.file().equals("fleet.xlsx, sheet “Buses”") && !p.column().isEmpty()));
        assertEquals(3, preview.remarks().stream().filter(r -> r.contains("is left out, because it begins with “")).count());
    }

    private static void fill(XSSFSheet sheet, Map<Integer, String> planted) {
        List<String> headers = List.of("Unit #", "Use", "Body", "Fuel type", "Year", "Engine MY", "In service", "Mileage (mi)", "Annual miles", "MPG");
        text(sheet.createRow(0), List.of("Our buses, all of them"));
        text(sheet.createRow(2), headers);
        int at = 3;
        for (int bus = 0; bus < 500; bus++) {
            if (bus % 200 == 199) {
                text(sheet.createRow(at++), headers);
            }
            if (bus % 170 == 169) {
                text(sheet.createRow(at++), List.of("Subtotal", "", "", "", "", "", "", "1,000,000"));
            }
            List<String> cells = new ArrayList<>(List.of("K" + (1000 + bus), bus % 9 == 0 ? "spare" : "activity", "C", "diesel", "2012", "2011", "2012",
                    "$81,200".substring(1), "5200", "6.4"));
            if (bus % 17 == 5 && planted.size() < 30) {
                plant(cells, planted.size(), at + 1, planted);
            }
            text(sheet.createRow(at++), cells);
        }
        text(sheet.createRow(at), List.of("Total", "", "", "", "", "", "", "40,600,000"));
    }

    /** One of ten kinds of errors, thrice each. */
    private static void plant(List<String> cells, int number, int row, Map<Integer, String> planted) {
        int[] columns = {0, 1, 2, 4, 5, 6, 7, 8, 9, 3};
        String[] values = {"K1000", "yard art", "Q", "2012a", "20 11", "in 2012", "81,2,00", "-5200", "6.4 km", "plutonium"};
        String[] told = {"stands in rows", "must be one of", "is neither a body type", "must be a year", "must be a year", "must be a year",
            "must be a number", "of at least 0", "must be a number", "no vehicle type"};
        int kind = number % 10;
        cells.set(columns[kind], values[kind]);
        planted.put(row, told[kind]);
    }

    private static void text(Row row, List<String> texts) {
        for (int place = 0; place < texts.size(); place++) {
            row.createCell(place).setCellValue(texts.get(place));
        }
    }
}
