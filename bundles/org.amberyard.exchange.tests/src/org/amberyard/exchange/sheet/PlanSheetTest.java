package org.amberyard.exchange.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.amberyard.exchange.StudyFolderExport;
import org.amberyard.model.common.Quality;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.Replacement;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** Replacement schedules into the invented example. */
class PlanSheetTest extends ExampleSheets {
    private static final String HEADER = "Bus replacement schedule,,,,,,,,\nadopted in May,,,,,,,,\n"
            + "Plan,FY,Bus #,Action,Replace with,Grant,Used price,Used age,Battery health\n";
    private static final String PLAN = "Electric in stages";

    private SheetImport made(String rows) throws Exception {
        return samples.recognised("schedule.csv", HEADER + rows, study);
    }

    private List<String> problems(String rows) throws Exception {
        return SampleSheets.problems(made(rows), study).stream().map(p -> p.replace("schedule.csv, ", "")).toList();
    }

    private Plan plan(String name) {
        return study.getPlans().stream().filter(p -> p.getName().equals(name)).findFirst().orElseThrow();
    }

    private List<Replacement> steps(String plan, String bus) {
        return plan(plan).getReplacements().stream().filter(s -> s.getBus().getName().equals(bus)).toList();
    }

    @Test
    void rowsBecomeTheStepsOfTheirBus() throws Exception {
        SheetImport made = made(PLAN + ",2028,B02,Buy electric,Electric C 150,Clean Fleet Fund,,,\n"
                + PLAN + ",FY28,B3,replace,Electric C 150,Clean Fleet Fund; Make-ready,,,\n"
                + PLAN + ",2027,B01,retire,,,,,\n"
                + PLAN + ",2030,B09,replace,Electric C 150,,\"$121,234\",3,92 %\n"
                + PLAN + ",2039,B09,replace,Electric C 150,,,,\n"
                + PLAN + ",,B07,keep,,,,,\n"
                + "Small,2027,B08,retire,,,,,\n");
        assertEquals("plan-steps", made.kind().id());
        SheetImport.Preview preview = made.preview(study);
        assertEquals(List.of(), preview.problems());
        assertTrue(preview.remarks().contains("Bus B09 has 2 steps in plan “Electric in stages”: 2030 (row 7), 2039 (row 8); its place is taken anew "
                + "each time. Delete a row where it is the same step."), preview.remarks().toString());
        Replacement second = steps(PLAN, "B02").get(0);
        preview.into(study);
        assertEquals(List.of(second), steps(PLAN, "B02"), "the step has moved");
        assertEquals(2028, second.getYear());
        Replacement third = steps(PLAN, "B03").get(0);
        assertEquals(2028, third.getYear());
        assertEquals(List.of("Clean Fleet Fund", "Make-ready"), third.getProgrammes().stream().map(ElementNames::of).toList());
        assertTrue(third.getProgrammes().stream().allMatch(study.getProgrammes()::contains), "programmes of this study, not of the copy");
        assertNull(steps(PLAN, "B01").get(0).getNewType());
        assertEquals(List.of(), steps(PLAN, "B01").get(0).getProgrammes());
        assertEquals(121_234, steps(PLAN, "B09").get(0).getUsedPrice(), 1e-9);
        assertEquals(0.92, steps(PLAN, "B09").get(0).getUsedHealth(), 1e-9);
        assertEquals(List.of(2030, 2039), steps(PLAN, "B09").stream().map(Replacement::getYear).toList());
        assertEquals(List.of(), steps(PLAN, "B07"));
        assertEquals(1, plan("Small").getReplacements().size());
        assertEquals(study.getBuses().stream().filter(b -> b.getName().equals("B08")).findFirst().orElseThrow(), steps("Small", "B08").get(0).getBus());
        assertEquals(Quality.ASSUMED, plan("Small").getSources().get(0).getQuality());
        assertEquals(List.of(), SampleSheets.preview(folder.resolve("schedule.csv"), study).changes(), "once more changes nothing");
    }

    @Test
    void everyProblemIsToldWithRowColumnValueAndRemedy() throws Exception {
        assertEquals(List.of(
                "row 4, column “Bus #”: “Bus 3” is no bus of the study; it has B01, B02, B03, B04, B05, B06, B07, B08 and 16 more. Is “B03” meant?",
                "row 5, column “Replace with”: “Electric C 15” is no vehicle type of the study; it has Diesel C 2005-2009, Diesel C 2010-2015, "
                        + "Diesel C 2016-2020, Diesel C new, Diesel A, Gasoline A, Gasoline A new, Electric C 150 and 2 more. Is “Electric C 150” meant?",
                "row 5, column “FY”: “20230” must be a fiscal year; the study runs from 2026 to 2040.",
                "row 6, column “Action”: The row says “retire” but names the new type “Electric C 150”; clear one of the two.",
                "row 7, column “Bus #”: “B01” stands in rows 6 and 7; they differ in Action, Used price. Keep one of them.",
                "row 8, column “Action”: “paint” must be replace, retire or keep.",
                "row 8, column “Grant”: “Cleen Fleet Fund” is no programme of the study; it has Clean Fleet Fund, National Fleet Rebate, Make-ready. "
                        + "Is “Clean Fleet Fund” meant?",
                "row 9, column “Replace with”: A new type is missing; name one of Diesel C 2005-2009, Diesel C 2010-2015, Diesel C 2016-2020, "
                        + "Diesel C new, Diesel A, Gasoline A, Gasoline A new, Electric C 150 and 2 more, or write “retire” in a column “Action” "
                        + "where no bus takes the place.",
                "row 10, column “Used price”: “12 kWh” must be a number in USD.",
                "row 10, column “Plan”: A plan is missing; name one of Like for like, Electric in stages, Rebate buses only, or a new one."),
                problems(PLAN + ",FY28,Bus 3,replace,Electric C 150,,,,\n"
                        + PLAN + ",20230,B04,replace,Electric C 15,,,,\n"
                        + PLAN + ",2027,B01,retire,Electric C 150,,,,\n"
                        + PLAN + ",2027,B01,replace,Electric C 150,,\"$1,234\",,\n"
                        + PLAN + ",2030,B06,paint,Electric C 150,Cleen Fleet Fund,,,\n"
                        + PLAN + ",2031,B05,,,,,,\n"
                        + ",2027,B07,keep,,,12 kWh,,\n"));
    }

    @Test
    void aBusThatStaysAndGoesInOnePlanIsAProblem() throws Exception {
        String message = "row %s, column “Action”: The row keeps bus B07 for all years of plan “Electric in stages”, but it has a step in row %s; keep one of "
                + "the two, or write “replace” or “retire” where the row is a step too.";
        assertEquals(List.of(message.formatted(4, "5 (2030)")), problems(PLAN + ",,B07,keep,,,,,\n" + PLAN + ",2030,B07,replace,Electric C 150,,,,\n"));
        assertEquals(List.of(message.formatted(5, "4 (2029)")), problems(PLAN + ",2029,B07,retire,,,,,\n" + PLAN + ",2030,B07,keep,,,,,\n"));
        assertEquals(List.of(), problems(PLAN + ",,B07,keep,,,,,\nSmall,2030,B07,replace,Electric C 150,,,,\n"), "other plans are others");
    }

    /** A step of B02 that has all that a purchase can have. */
    private Replacement usedStep() {
        Replacement step = steps(PLAN, "B02").get(0);
        step.getProgrammes().forEach(p -> p.setScrapsOldBus(false));
        step.setYear(2028);
        step.setCascadeTo(study.getBuses().get(4));
        step.setUsedAgeYears(4);
        step.setUsedOdometerKm(90_000);
        step.setUsedPrice(80_000);
        step.setUsedHealth(0.9);
        step.setNote("quoted in May");
        return step;
    }

    private List<String> changes(String table) throws Exception {
        SheetImport.Preview preview = samples.recognised("steps.csv", table, study).preview(study);
        assertEquals(List.of(), preview.problems());
        List<String> words = preview.changes().stream().map(c -> c.words().replaceFirst("^replacement \\d+ B02 of plan " + PLAN + ", ", "")).toList();
        preview.into(study);
        return words;
    }

    @Test
    void anEmptyCellIsNoneAndThePreviewTellsWhatGoes() throws Exception {
        Replacement step = usedStep();
        String goer = step.getCascadeTo().getName();
        String all = "Plan,Year,Bus,New type,Old bus moves to,Programmes,Age of used bus,Odometer of used bus,Price of used bus,"
                + "Battery health of used bus,Note\n";
        assertEquals(List.of("Programmes: Clean Fleet Fund → nothing", "Old bus moves to: " + goer + " → nothing", "Age of used bus: 4 yr → 0 yr",
                "Odometer of used bus: 55,923 mi → 0 mi", "Price of used bus: 80,000 USD → 0 USD", "Battery health of used bus: 90 % → 0 %",
                "Note: quoted in May → nothing"), changes(all + PLAN + ",2028,B02,Electric C 150,,,,,,,\n"));
        assertNull(step.getCascadeTo());
        assertEquals(List.of(), step.getProgrammes());
        assertEquals(List.of(0, 0.0, 0.0, 0.0), List.of(step.getUsedAgeYears(), step.getUsedOdometerKm(), step.getUsedPrice(), step.getUsedHealth()));
    }

    @Test
    void whatTheSheetHasNoColumnOfStaysInItsYearAndInAnother() throws Exception {
        Replacement step = usedStep();
        assertEquals(List.of(), changes("Plan,Year,Bus,New type\n" + PLAN + ",2028,B02,Electric C 150\n"));
        assertEquals(List.of("Year: 2028 → 2030"), changes("Plan,Year,Bus,New type\n" + PLAN + ",2030,B02,Electric C 150\n"));
        assertEquals(List.of("Clean Fleet Fund"), step.getProgrammes().stream().map(ElementNames::of).toList());
        assertEquals(List.of(4, 90_000.0, 80_000.0, 0.9), List.of(step.getUsedAgeYears(), step.getUsedOdometerKm(), step.getUsedPrice(), step.getUsedHealth()));
        assertEquals(study.getBuses().get(4), step.getCascadeTo());
    }

    @Test
    void anotherTypeKeepsNothingOfThePurchaseAndNoneKeepsNoPlaceEither() throws Exception {
        Replacement step = usedStep();
        String goer = step.getCascadeTo().getName();
        List<String> purchase = List.of("Programmes: Clean Fleet Fund → nothing", "Age of used bus: 4 yr → 0 yr", "Odometer of used bus: 55,923 mi → 0 mi",
                "Price of used bus: 80,000 USD → 0 USD", "Battery health of used bus: 90 % → 0 %");
        List<String> another = changes("Plan,Year,Bus,New type\n" + PLAN + ",2028,B02,Diesel C new\n");
        assertEquals("New type: Electric C 150 → Diesel C new", another.get(0));
        assertEquals(purchase, another.subList(1, another.size()));
        assertEquals(goer, step.getCascadeTo().getName());
        study = SampleSheets.example();
        step = usedStep();
        List<String> retired = changes("Plan,Year,Bus,Action,New type\n" + PLAN + ",2028,B02,retire,\n");
        assertEquals("New type: Electric C 150 → nothing", retired.get(0));
        assertEquals(purchase, retired.subList(1, retired.size() - 1));
        assertEquals("Old bus moves to: " + goer + " → nothing", retired.get(retired.size() - 1));
    }

    @Test
    void theTemplateTellsWhatAnEmptyCellMeans() throws Exception {
        Path file = folder.resolve("template.xlsx");
        SheetKind kind = SheetKind.byId("plan-steps").orElseThrow();
        new SheetTemplate(kind, study).write(file);
        Map<String, String> meanings = new HashMap<>();
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
            book.getSheet("Columns").forEach(row -> meanings.put(row.getCell(0).getStringCellValue(), row.getCell(3).getStringCellValue()));
        }
        assertTrue(meanings.get("Programmes").endsWith("Empty for none."), meanings.toString());
        assertTrue(meanings.get("Old bus moves to").endsWith("Empty sells the outgoing bus."), meanings.toString());
        assertTrue(meanings.get("Price of used bus (USD)").endsWith("Empty for a new bus at the price of its type."), meanings.toString());
        assertEquals(kind.purpose(), meanings.get(""));
    }

    @Test
    void rulesOfTheStudyHoldForItsRows() throws Exception {
        assertEquals(List.of("row 4: Replacement 2030 B09 of plan Electric in stages: the used Electric C 150 has a battery, but what it still holds "
                + "is not given; enter its capacity over that of a new one, as measured or promised by the seller."),
                problems(PLAN + ",2030,B09,replace,Electric C 150,,100000,3,\n").stream().map(p -> p.replace(", column “Battery health”", "")).toList());
    }

    @Test
    void thePlanMayBeThatOfTheSheetOrTheOnlyOne() throws Exception {
        Path book = samples.workbook("schedule.xlsx", b -> {
            var sheet = b.createSheet("rebate buses only");
            List<String> head = List.of("Year", "Bus", "New type");
            for (int i = 0; i < head.size(); i++) {
                cell(sheet, 0, i, head.get(i));
                cell(sheet, 1, i, List.of("2029", "B20", "Diesel C new").get(i));
            }
        });
        SheetImport.Preview named = SampleSheets.preview(book, study);
        assertEquals(List.of(), named.problems());
        named.into(study);
        assertEquals(2029, steps("Rebate buses only", "B20").get(0).getYear());
        Path text = samples.text("one.csv", "Year,Bus,New type\n2029,B21,Diesel C new\n");
        assertEquals("one.csv, row 1: Nothing tells which plan the steps are of; the study has Like for like, Electric in stages, Rebate buses only. "
                + "Add a column “Plan”, or give the sheet the name of a plan.", SampleSheets.preview(text, study).problems().get(0).toString());
        study.getPlans().subList(1, 3).clear();
        assertEquals(List.of(), SampleSheets.preview(text, study).problems());
    }

    private static void cell(XSSFSheet sheet, int row, int place, String text) {
        var line = sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
        line.createCell(place).setCellValue(text);
    }

    @Test
    void theTableOfAnExportedFolderChangesNothing() throws Exception {
        Path exported = folder.resolve("exported");
        study.getPlans().get(1).getReplacements().get(0).setNewType(null);
        study.getPlans().get(1).getReplacements().get(0).getProgrammes().clear();
        StudyFolderExport.write(study, exported);
        SheetImport.Preview preview = SampleSheets.preview(exported.resolve("replacements.csv"), study);
        assertEquals(List.of(), preview.problems());
        assertEquals(List.of(), preview.changes());
    }
}
