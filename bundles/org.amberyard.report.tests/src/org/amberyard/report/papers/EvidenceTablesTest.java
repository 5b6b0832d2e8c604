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
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.DocumentFormat;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
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
        assertTrue(steps.stream().anyMatch(s -> s.startsWith("Delivered and in service at the latest, old bus leaves its place: "
                + in.replaced().get(0).now().vehicle().unit() + " for B01; ")), steps.toString());
        assertTrue(steps.contains("Scrapped at the latest: B01; B02; B03; B15"), steps.toString());
        assertTrue(steps.contains("Close-out of the whole plan, not before"));
        assertTrue(steps.stream().anyMatch(s -> s.startsWith("Ports and works in service: ")
                && s.endsWith("; Trench, conduit and bollards")), steps.toString());
        assertTrue(steps.stream().noneMatch(s -> s.contains("Contingency") || s.contains("Engineering")), steps.toString());
        List<String> months = printed(timeline, "Months from the award");
        assertEquals(5, months.indexOf("0"), "what the study does not date stands first, without months");
        assertTrue(months.contains("9"), "whole months from the award to the first deliveries: " + months);
    }

    @Test
    void worksAreSortedAndEligibleByTheRules() {
        DataTable works = GrantTable.T3.of(in).get(0);
        assertTrue(printed(works, "Category, by its name").containsAll(List.of("contingency", "soft cost", "civil", "electrical", "controls",
                "hardware and installation")), printed(works, "Category").toString());
        assertTrue(printed(works, "Eligible").containsAll(List.of("yes", "eligible, not applied for",
                "no: it pays for purchases of 2027 to 2028")), printed(works, "Eligible").toString());
        assertFalse(works.columns().get(column(works, "Eligible")).toFill());
    }

    @Test
    void aSourceIsMeasuredByWhatItMayPayFor() {
        DataTable sources = GrantTable.T5.of(in).get(0);
        int share = column(sources, "Share of the eligible cost");
        DataTable.Row makeReady = row(sources, "Make-ready", "");
        BigDecimal of = (BigDecimal) makeReady.cells().get(share);
        assertTrue(of.doubleValue() > ((BigDecimal) makeReady.cells().get(column(sources, "Share of the cost"))).doubleValue());
        assertTrue(of.doubleValue() <= 0.8, "it pays for 80 % of infrastructure: " + of);
    }

    @Test
    void theRegisterHasPricesTariffsProgrammesAndFactors() {
        List<DataTable> tables = GrantTable.T12.of(in);
        String main = printed(tables.get(0), "Inputs").toString();
        for (String input : List.of("Price 338,000 USD", "On-peak energy, weekdays, 14:00 to 20:00, Price per kWh 0.232 USD/kWh",
                "Share of infrastructure 80 %", "Hardware price 6,200 USD", "Base year 2026; ")) {
            assertTrue(main.contains(input), input + " in " + main);
        }
        for (String other : List.of("Driver hurry", "10.21", "Straight-line years", "Currency")) {
            assertFalse(main.contains(other), other);
        }
        assertFalse(printed(tables.get(0), "Element").toString().contains("National Fleet Rebate"), "it pays nothing");
        DataTable factors = tables.get(2);
        assertTrue(factors.printed(row(factors, "fuel diesel", "fuel burnt"), 2).startsWith("CO2 10.21"));
        double inputs = tables.get(1).rows().stream().mapToDouble(r -> ((BigDecimal) r.cells().get(4)).doubleValue()).sum();
        assertEquals(in.facts().inputs().rows().size(), inputs, "defaults are sources too");
    }

    @Test
    void everySourceThatATableCitesIsListed() {
        List<DataTable> tables = GrantTable.T12.of(in);
        List<String> numbers = printed(tables.get(1), "Number");
        for (DataTable citing : List.of(tables.get(0), tables.get(2))) {
            for (String cited : printed(citing, "Source")) {
                assertTrue(cited.equals("–") || numbers.contains(cited), cited);
            }
        }
        DataTable.Row offer = row(tables.get(1), numbers.get(printed(tables.get(1), "Source").indexOf("State contract offer, FY2026 "
                + "(invented for this example)")), "");
        DataTable.Row price = row(tables.get(0), "electric bus type Electric C 150", "Price 338,000 USD");
        assertEquals(offer.cells().get(0), price.cells().get(3));
    }

    @Test
    void factorsThatNoBusUsesAreLeftOut() {
        DataTable factors = GrantTable.T12.of(in).get(2);
        String groups = printed(factors, "Holds for").toString();
        assertTrue(groups.contains("engines diesel 2007 to 2009"), groups);
        assertFalse(groups.contains("propane"), groups);
        assertFalse(groups.contains("other engines"), groups);
        assertFalse(groups.contains("marginal"), groups);
    }

    @Test
    void theSetWithItsNarrativeHasThirtyThreePagesAtMost() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(DocumentFormat.PDF.write(GrantSet.of(new PaperInput(in.result(), in.planIndex(), in.facts(),
                PaperChoices.STANDARD))))) {
            assertTrue(pdf.getNumberOfPages() <= 33, "pages: " + pdf.getNumberOfPages());
        }
    }

    @Test
    void figuresAmongWordsAreNumbersInSpreadsheets() throws Exception {
        byte[] written = DocumentFormat.XLSX.write(GrantSet.of(in));
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(written))) {
            assertEquals(24, cell(workbook.getSheet("T10"), "Buses, 2026", 1).getNumericCellValue());
            assertEquals("", cell(workbook.getSheet("T10"), "Enrollment", 1).getStringCellValue());
            Cell fuel = cell(workbook.getSheet("T10"), "Fuel of the fleet", 1);
            assertEquals(CellType.NUMERIC, fuel.getCellType());
            assertEquals(CellFormat.VALUE.print(BigDecimal.valueOf(Math.round(fuel.getNumericCellValue()))),
                    new DataFormatter().formatCellValue(fuel));
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
                        .get(column(buses, "Left on the worst day, new"))).doubleValue(),
                0.15);
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
