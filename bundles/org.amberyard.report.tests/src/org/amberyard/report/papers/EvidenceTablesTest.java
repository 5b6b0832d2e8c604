package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.units.Unit;
import org.amberyard.model.study.Study;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.DocumentFormat;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class EvidenceTablesTest {
    private static final ExamplePapers EXAMPLE = new ExamplePapers();
    private static PaperInput in;

    @BeforeAll
    static void evaluate() {
        in = EXAMPLE.in(EXAMPLE.study(), ExamplePapers.tables(GrantTable.T10, GrantTable.T12));
    }

    private static int column(DataTable table, String begin) {
        return IntStream.range(0, table.columns().size()).filter(i -> table.columns().get(i).label().startsWith(begin)).findFirst()
                .orElseThrow(() -> new AssertionError(table.title() + " has no column " + begin));
    }

    private static List<String> printed(DataTable table, String column) {
        return table.rows().stream().map(r -> table.printed(r, column(table, column))).toList();
    }

    private static DataTable.Row row(DataTable table, String first, String second) {
        return table.rows().stream().filter(r -> r.cells().get(0).toString().startsWith(first)
                && (second.isEmpty() || r.cells().get(1).equals(second))).findFirst()
                .orElseThrow(() -> new AssertionError(table.title() + " has no row " + first + " " + second));
    }

    @Test
    void theTimelineHasDeliveryScrapAndCloseOutInMonths() {
        DataTable timeline = GrantTable.T9.of(in).get(0);
        List<String> steps = printed(timeline, "Milestone");
        assertTrue(steps.contains("Delivery of " + in.replaced().get(0).now().vehicle().unit() + " at the latest"), steps.toString());
        assertTrue(steps.contains(in.replaced().get(0).old().vehicle().unit() + " to be scrapped from then on"));
        assertTrue(steps.contains("Close-out, not before"));
        assertTrue(steps.contains("Trench, conduit and bollards in service"), steps.toString());
        assertTrue(steps.stream().noneMatch(s -> s.startsWith("Contingency") || s.startsWith("Engineering")), steps.toString());
        List<String> months = printed(timeline, "Months after");
        assertEquals(6, months.indexOf("0"), "what the study does not date stands first, without months");
        assertTrue(months.contains("9"), "nine months from order to delivery: " + months);
    }

    @Test
    void worksAreSortedAndEligibleByTheRules() {
        DataTable works = GrantTable.T3.of(in).get(0);
        assertTrue(printed(works, "Category, by its name").containsAll(List.of("contingency", "soft cost", "civil", "electrical", "controls",
                "hardware and installation")), printed(works, "Category").toString());
        assertTrue(printed(works, "Eligible").contains("yes") || printed(works, "Eligible").contains("not named for it"));
        assertFalse(works.columns().get(column(works, "Eligible")).toFill());
    }

    @Test
    void aSourceIsMeasuredByWhatItMayPayFor() {
        DataTable sources = GrantTable.T5.of(in).get(0);
        int share = column(sources, "Share of the cost eligible");
        DataTable.Row makeReady = row(sources, "Make-ready", "");
        BigDecimal of = (BigDecimal) makeReady.cells().get(share);
        assertTrue(of.doubleValue() > ((BigDecimal) makeReady.cells().get(column(sources, "Share of the cost"))).doubleValue());
        assertTrue(of.doubleValue() <= 0.8, "it pays for 80 % of infrastructure: " + of);
    }

    @Test
    void theRegisterHasPricesTariffsProgrammesAndFactors() {
        DataTable main = GrantTable.T12.of(in).get(0);
        assertEquals("338,000", main.printed(row(main, "electric bus type", "Price"), 2));
        assertEquals("0.232", main.printed(row(main, "tariff charge On-peak", "Price per kWh"), 2));
        assertEquals("80", main.printed(row(main, "programme Make-ready", "Share of infrastructure"), 2));
        assertEquals("6200", main.printed(row(main, "port type", "Hardware price"), 2));
        assertEquals("2026", main.printed(row(main, "settings", "Base year"), 2));
        assertFalse(printed(main, "Input").contains("Driver hurry"));
        DataTable factors = GrantTable.T12.of(in).get(2);
        assertEquals("10.21", factors.printed(row(factors, "fuel diesel", "fuel burnt"), 3));
        double inputs = GrantTable.T12.of(in).get(1).rows().stream().mapToDouble(r -> ((BigDecimal) r.cells().get(3)).doubleValue())
                .sum();
        assertEquals(in.facts().inputs().rows().size(), inputs, "defaults are sources too");
    }

    @Test
    void figuresAmongWordsAreNumbersInSpreadsheets() throws Exception {
        byte[] written = DocumentFormat.XLSX.write(GrantSet.of(in));
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(written))) {
            assertEquals(24, cell(workbook.getSheet("T10"), "Buses, 2026", 1).getNumericCellValue());
            assertEquals("", cell(workbook.getSheet("T10"), "Enrollment", 1).getStringCellValue());
            Cell price = cell(workbook.getSheet("T12a"), "electric bus type", 2);
            assertEquals(CellType.NUMERIC, price.getCellType());
            assertEquals("338,000", new DataFormatter().formatCellValue(price));
        }
    }

    private static Cell cell(XSSFSheet sheet, String first, int column) {
        for (Row row : sheet) {
            if (row.getCell(0) != null && row.getCell(0).toString().startsWith(first)) {
                return row.getCell(column);
            }
        }
        throw new AssertionError(sheet.getSheetName() + " has no row " + first);
    }

    @Test
    void needHasWhatWorkOrdersTell() {
        Study study = EXAMPLE.study();
        study.getBuses().forEach(b -> b.setMeasuredUpkeepPerKm(0));
        study.getBuses().get(0).setMeasuredUpkeepPerKm(0.5);
        PaperInput measured = EXAMPLE.in(study, in.choices());
        DataTable need = GrantTable.T10.of(measured).get(0);
        DataTable.Row repairs = row(need, "Repair cost by distance", "");
        assertEquals(0.5 * Unit.KM_PER_MILE, assertInstanceOf(BigDecimal.class, repairs.cells().get(1)).doubleValue(), 0.005);
        assertEquals("work orders, buses: 1", repairs.cells().get(3));
        assertTrue(printed(need, "Figure").contains("Mean years of these past it"));
    }

    @Test
    void theRangeIsTheDayWithWhatIsLeft() {
        DataTable buses = GrantTable.T2.of(in).get(0);
        DataTable.Row first = buses.rows().get(0);
        assertEquals(((BigDecimal) first.cells().get(column(buses, "Range verified"))).doubleValue(),
                ((BigDecimal) first.cells().get(column(buses, "Distance a day"))).add((BigDecimal) first.cells()
                        .get(column(buses, "Left on the worst day, new"))).doubleValue(), 0.15);
    }

    @Test
    void decimalsFollowTheUnitNotTheCurrency() {
        assertEquals(4, PrintedResults.decimals("EUR/km"));
        assertEquals(4, PrintedResults.decimals("USD/mi"));
        assertEquals(4, PrintedResults.decimals("kWh/km"));
        assertEquals(2, PrintedResults.decimals("EUR"));
        assertEquals(1, PrintedResults.decimals("km"));
    }
}
