package org.amberyard.report.cashflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.Payback;
import org.amberyard.core.plan.Comparison;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.study.MoneyBasis;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.Timing;
import org.amberyard.model.vehicles.Fuel;
import org.amberyard.report.document.OfficeSchema;
import org.amberyard.report.papers.ExamplePapers;
import org.amberyard.report.papers.OutsideProgram;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CashFlowBookTest {
    private static final ExamplePapers EXAMPLE = new ExamplePapers();
    private static final double RELATIVE = 1e-9;
    private static StudyResult result;
    private static byte[] book;

    @TempDir
    Path folder;

    @BeforeAll
    static void write() throws IOException {
        result = EXAMPLE.evaluated(EXAMPLE.study());
        book = CashFlowBook.bytes(result, UnitSystem.US, "footer");
    }

    private static XSSFWorkbook open(byte[] bytes) throws IOException {
        return new XSSFWorkbook(new ByteArrayInputStream(bytes));
    }

    /** Figures of the sheet “Compare” by row and column. */
    private interface Compared {
        Object at(int plan, int column);
    }

    private static void near(double expected, Object figure) {
        assertEquals(expected, (double) figure, RELATIVE * Math.abs(expected));
    }

    private static void checkAgainst(StudyResult expected, Compared compared) {
        for (int plan = 0; plan < expected.plans().size(); plan++) {
            PlanResult of = expected.plans().get(plan);
            near(of.measures().presentCost(), compared.at(plan, 1));
            near(of.measures().annualEquivalent(), compared.at(plan, 2));
        }
        for (Comparison comparison : expected.comparisons()) {
            assertEquals(comparison.presentSaving(), (double) compared.at(comparison.plan(), 3), RELATIVE * expected.baseline()
                    .measures().presentCost());
            checkPayback(comparison.simple(), compared.at(comparison.plan(), 4));
            checkPayback(comparison.discounted(), compared.at(comparison.plan(), 5));
        }
    }

    private static void checkPayback(Payback expected, Object figure) {
        switch (expected.outcome()) {
            case NEVER -> assertEquals("never", figure);
            case NO_DIFFERENCE -> assertEquals("no difference", figure);
            case AT_ONCE -> assertEquals(0.0, figure);
            case AFTER -> assertEquals(expected.years(), (double) figure, 1e-6);
        }
    }

    private static Compared recomputed(XSSFWorkbook workbook) {
        XSSFFormulaEvaluator.evaluateAllFormulaCells(workbook);
        XSSFSheet sheet = workbook.getSheet("Compare");
        return (plan, column) -> {
            Cell cell = sheet.getRow(2 + plan).getCell(column);
            return cell.getCachedFormulaResultType() == CellType.STRING ? cell.getStringCellValue()
                    : (Object) cell.getNumericCellValue();
        };
    }

    private static Cell input(XSSFWorkbook workbook, String label, int column) {
        for (Row row : workbook.getSheet("Inputs")) {
            if (row.getCell(0) != null && row.getCell(0).getStringCellValue().equals(label)) {
                return row.getCell(column);
            }
        }
        throw new AssertionError("There is no input " + label);
    }

    @Test
    void asItIsWrittenItGivesTheResults() throws IOException {
        try (XSSFWorkbook workbook = open(book)) {
            checkAgainst(result, recomputed(workbook));
        }
    }

    @Test
    void itIsValidByTheSchemaOfWorkbooks() throws Exception {
        OfficeSchema.check(book, 12);
    }

    @Test
    void everyCategoryOfEveryYearIsThatOfTheLedger() throws IOException {
        try (XSSFWorkbook workbook = open(book)) {
            for (int plan = 0; plan < result.plans().size(); plan++) {
                XSSFSheet ledger = workbook.getSheet("Ledger " + (plan + 1));
                for (CostCategory category : CostCategory.values()) {
                    Row row = rowOf(ledger, category.label());
                    for (int year = 0; year < result.input().years(); year++) {
                        double expected = result.plans().get(plan).ledger().amount(year, category);
                        assertEquals(expected, row.getCell(3 + year).getNumericCellValue(), 1e-9 * Math.max(1, Math.abs(expected)),
                                category + " " + year);
                    }
                }
            }
        }
    }

    private static Row rowOf(XSSFSheet sheet, String label) {
        Row found = null;
        for (Row row : sheet) {
            found = row.getCell(0) != null && row.getCell(1) == null && row.getCell(0).getStringCellValue().equals(label) ? row
                    : found;
        }
        return found;
    }

    @Test
    void anotherDiscountRateAndPriceGiveWhatTheStudyGivesWithThem() throws IOException {
        Study study = EXAMPLE.study();
        study.getSettings().setDiscountRate(0.07);
        FuelPrice diesel = (FuelPrice) study.getPrices().stream().filter(p -> p instanceof FuelPrice f
                && f.getFuel() == Fuel.DIESEL)
                .findFirst().orElseThrow();
        double perGallon = 5.5;
        diesel.setPricePerL(perGallon / Unit.L_PER_GALLON);
        StudyResult other = EXAMPLE.evaluated(study);
        try (XSSFWorkbook workbook = open(book)) {
            input(workbook, "Real discount rate a year", 1).setCellValue(other.input().money().rates().real());
            input(workbook, "price of fuel, diesel", 2).setCellValue(perGallon);
            checkAgainst(other, recomputed(workbook));
        }
        assertTrue(Math.abs(other.baseline().measures().presentCost() - result.baseline().measures().presentCost()) > 1000);
    }

    @Test
    void nominalMidYearStudiesAgreeToo() throws IOException {
        Study study = EXAMPLE.study();
        study.getSettings().setMoneyBasis(MoneyBasis.NOMINAL);
        study.getSettings().setTiming(Timing.MID_YEAR);
        StudyResult nominal = EXAMPLE.evaluated(study);
        try (XSSFWorkbook workbook = open(CashFlowBook.bytes(nominal, UnitSystem.METRIC, ""))) {
            checkAgainst(nominal, recomputed(workbook));
        }
    }

    private Compared byOffice(Consumer<XSSFWorkbook> change) throws Exception {
        Path file = folder.resolve("cash.xlsx");
        try (XSSFWorkbook workbook = open(book); OutputStream out = Files.newOutputStream(file)) {
            change.accept(workbook);
            workbook.forEach(s -> s.forEach(r -> r.forEach(CashFlowBookTest::forget)));
            workbook.write(out);
        }
        OutsideProgram.convert("csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,2", file, folder);
        try (CSVParser parser = CSVParser.parse(Files.readString(folder.resolve("cash-Compare.csv")), CSVFormat.DEFAULT)) {
            List<CSVRecord> records = parser.getRecords();
            return (plan, column) -> {
                String text = records.get(2 + plan).get(column);
                return text.matches("-?[0-9.E+-]+") ? (Object) Double.parseDouble(text) : text;
            };
        }
    }

    /** What was kept beside a formula goes, so that the office program must compute. */
    private static void forget(Cell cell) {
        if (cell.getCellType() == CellType.FORMULA) {
            String formula = cell.getCellFormula();
            cell.removeFormula();
            cell.setBlank();
            cell.setCellFormula(formula);
        }
    }

    @Test
    void anOfficeProgramComputesTheResults() throws Exception {
        OutsideProgram.require("soffice", "--version");
        checkAgainst(result, byOffice(w -> {}));
    }

    @Test
    void anOfficeProgramFollowsAChangedRate() throws Exception {
        OutsideProgram.require("soffice", "--version");
        Study study = EXAMPLE.study();
        study.getSettings().setDiscountRate(0.09);
        StudyResult other = EXAMPLE.evaluated(study);
        checkAgainst(other, byOffice(w -> input(w, "Real discount rate a year", 1).setCellValue(other.input().money().rates()
                .real())));
    }
}
