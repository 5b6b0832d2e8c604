package org.amberyard.report.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.zip.ZipInputStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pages say once what rows repeat, and lose nothing of it; programs have every word in its cell. */
class CondensedTableTest {
    private static final String HUB = "Agency of factors, inventory of greenhouse gases, table 4, medium and heavy engines";
    private static final String CODE = "Handbook of emissions of another agency, chapter 1, tyres of two axles at half load";

    /** A factor with its source. */
    private record Line(int number) {
        String source() {
            return number == 4 ? "short" : number % 2 == 0 ? HUB : CODE;
        }
    }

    private static TableBuilder<Line> builder() {
        return new TableBuilder<Line>("F", "Table 1. Factors").text("Name", l -> "factor " + l.number()).text("Region", l -> "US")
                .optional("Old", "kg", CellFormat.WHOLE, l -> OptionalDouble.empty())
                .sum("Factor", "g/mi", CellFormat.decimals(1), l -> l.number() + 0.5).text("Source", Line::source).sums("");
    }

    private static DataTable table(int rows) {
        return new DataTable("F", "Table 1. Factors", builder().of(lines(rows)).columns(), builder().of(lines(rows)).rows().subList(0, rows),
                List.of("A note."), "");
    }

    private static List<Line> lines(int rows) {
        return IntStream.range(0, rows).mapToObj(Line::new).toList();
    }

    private static Document document(Block block) {
        return new Document("d", "D", "", List.of(), "", "", List.of(Section.of("S", block)));
    }

    private static String html(Block block) throws IOException {
        return new String(DocumentFormat.HTML.write(document(block)), StandardCharsets.UTF_8);
    }

    @Test
    void longWordsStandOnceBelowWithTheNumberInTheirCells() {
        DataTable paper = CondensedTable.of(table(6));
        assertEquals(List.of("Name", "Factor", "Source"), paper.columns().stream().map(DataTable.Column::label).toList());
        assertEquals(List.of("[1]", "[2]", "[1]", "[2]", "short", "[2]"), IntStream.range(0, 6).mapToObj(r -> paper.printed(paper.rows()
                .get(r), 2)).toList());
        assertEquals(List.of("In every row: Region US.", "Nothing stands in: Old (kg).", "A note.", "[1] Source: " + HUB, "[2] Source: " + CODE),
                paper.notes());
    }

    @Test
    void eachFigureAndEachWordIsOnThePage() {
        DataTable whole = table(6);
        DataTable paper = CondensedTable.of(whole);
        String all = paper.rows().toString() + paper.notes();
        whole.rows().forEach(r -> IntStream.range(0, whole.columns().size()).mapToObj(c -> r.cells().get(c)).filter(c -> c != null)
                .forEach(c -> assertTrue(all.contains(c.toString()), c.toString())));
    }

    @Test
    void wordsThatAreNotRepeatedStayInTheirCells() {
        DataTable two = table(2);
        assertEquals(HUB, CondensedTable.of(two).rows().get(0).cells().get(2));
    }

    @Test
    void wordsOfEachRowItsOwnStayWhereARowIsReadByThem() {
        String sentence = "A sentence that no column has room for, because it says at length what must be kept in mind of the figures beside it.";
        DataTable items = new TableBuilder<Line>("I", "Items").text("Item", l -> "Highest demand of charging without management in " + l.number())
                .number("Value", "kW", CellFormat.WHOLE, Line::number).text("Said", l -> l.number() == 3 ? sentence : "study " + l.number())
                .of(lines(6));
        DataTable paper = CondensedTable.of(items);
        assertEquals("Highest demand of charging without management in 2", paper.rows().get(2).cells().get(0));
        assertEquals(List.of("[1]", "study 4"), List.of(paper.rows().get(3).cells().get(2), paper.rows().get(4).cells().get(2)));
        assertEquals(List.of("[1] Said: " + sentence), paper.notes());
    }

    @Test
    void oneRowIsAListOfItsColumns() {
        DataTable paper = CondensedTable.of(table(1));
        assertEquals(5, paper.rows().size());
        assertEquals(List.of("Factor (g/mi)", "0.5"), paper.rows().get(3).cells());
        assertEquals(List.of("Old (kg)", "–"), paper.rows().get(2).cells());
    }

    @Test
    void aTableWithTotalsIsCitedWithAllItsColumnsOrLeftAsItIs() {
        DataTable summed = builder().of(lines(6));
        assertSame(summed, CondensedTable.of(summed));
        DataTable cited = CondensedTable.cited(summed);
        assertEquals(summed.columns().size(), cited.columns().size());
        assertEquals(DataTable.Kind.TOTAL, cited.rows().get(6).kind());
        assertEquals("18.0", cited.printed(cited.rows().get(6), 3));
        assertEquals("[2]", cited.rows().get(1).cells().get(4));
    }

    @Test
    void pagesHaveNumbersAndProgramsHaveWords() throws IOException {
        Block.Condensed block = Block.Condensed.of(table(6));
        String page = html(block);
        assertEquals(1, page.split(HUB, -1).length - 1);
        assertTrue(page.contains("<td>[1]</td>"));
        try (XWPFDocument docx = new XWPFDocument(new ByteArrayInputStream(DocumentFormat.DOCX.write(document(block))))) {
            assertEquals("[2]", docx.getTables().get(0).getRow(2).getCell(2).getText());
            assertTrue(docx.getParagraphs().stream().anyMatch(p -> p.getText().equals("[2] Source: " + CODE)));
        }
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(DocumentFormat.XLSX.write(document(block))))) {
            assertEquals(CODE, workbook.getSheet("F").getRow(4).getCell(4).getStringCellValue());
        }
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(DocumentFormat.CSV.write(document(block))))) {
            zip.getNextEntry();
            assertEquals(3, new String(zip.readAllBytes(), StandardCharsets.UTF_8).split(CODE, -1).length - 1);
        }
        assertTrue(new String(DocumentFormat.JSON.write(document(block)), StandardCharsets.UTF_8).contains(HUB));
    }

    @Test
    void aTableTurnsThePageOnlyWhereItNeedsTo() {
        assertFalse(Block.Condensed.of(table(6)).isWide(Paper.LETTER));
        TableBuilder<Line> wide = new TableBuilder<>("W", "Wide");
        IntStream.range(0, 14).forEach(c -> wide.number("Column " + c, "USD", CellFormat.MONEY, l -> 1e6 * (c + l.number())));
        assertTrue(Block.Condensed.close(wide.of(lines(3))).isWide(Paper.LETTER));
        assertFalse(Block.Condensed.close(wide.of(lines(3))).isWide(Paper.TABLOID));
    }

    @Test
    void noLinePartsUnitsAndTimes() throws IOException {
        DataTable table = new TableBuilder<Line>("T", "Table").number("Price of one", "USD/mi", CellFormat.CENTS, Line::number)
                .number("Saved", "t CO2e", CellFormat.CENTS, Line::number).text("When", l -> "at 22:00 for 3 USD/kWh").of(lines(2));
        String page = html(table);
        assertTrue(page.contains("Price of one <span class=\"id\">(USD/mi)</span>"), page);
        assertTrue(page.contains("Saved (t\u00a0CO2e)"), page);
        assertTrue(page.contains("at <span class=\"id\">22:00</span> for 3 <span class=\"id\">USD/kWh</span>"), page);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,273,140.00", "T001", "Diesel C 2010-2015", "Greenhouse gas saved", "placeholder", "HIGH-VOLTAGE", "−1,599,383.55",
        "Mean of the district's invoices, delivery included", "kWh/mi", "2026-01-01"})
    void widthsAreAboutThoseOfTheLetters(String words) throws IOException, FontFormatException {
        try (InputStream file = Document.class.getResourceAsStream("fonts/LiberationSans-Regular.ttf")) {
            Font font = Font.createFont(Font.TRUETYPE_FONT, file).deriveFont(100f);
            double measured = font.getStringBounds(words, new FontRenderContext(null, true, true)).getWidth() / 100;
            assertEquals(1, TextWidth.em(words) / measured, 0.12, words);
        }
    }
}
