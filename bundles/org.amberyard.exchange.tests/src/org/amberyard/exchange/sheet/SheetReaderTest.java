package org.amberyard.exchange.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.function.IntFunction;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.exchange.ReadingProgress;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Files of all kinds into sheets. */
class SheetReaderTest {
    private static final List<List<String>> TWO_ROWS = List.of(List.of("Bus", "Name"), List.of("B01", "Zoë"));

    @TempDir
    private Path folder;
    private SampleSheets samples;

    @BeforeEach
    void prepare() {
        samples = new SampleSheets(folder);
    }

    private static String refusal(Path path) {
        return assertThrows(ImportException.class, () -> SheetReader.read(path, ReadingProgress.NONE)).getMessage();
    }

    @Test
    void encodingsAreFoundOut() throws Exception {
        for (Charset charset : List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE, StandardCharsets.UTF_16,
                Charset.forName("windows-1252"))) {
            Sheet sheet = SampleSheets.only(samples.bytes("a.csv", "Bus,Name\r\nB01,Zoë\r\n".getBytes(charset)));
            assertEquals(TWO_ROWS, SampleSheets.texts(sheet), charset.name());
            assertEquals(charset.name().equals("windows-1252"), !sheet.remarks().isEmpty(), charset.name());
        }
        Sheet marked = SampleSheets.only(samples.text("b.csv", "\ufeffBus,Name\nB01,Zoë\n"));
        assertEquals(TWO_ROWS, SampleSheets.texts(marked));
    }

    @Test
    void separatorsAndDecimalCommasAreFoundOut() throws Exception {
        for (String separator : List.of(",", ";", "\t", "|")) {
            String text = "Bus,mpg,miles\nB01,\"6.2\",\"4,950\"\nB02,6.4,5100\n";
            Sheet sheet = SampleSheets.only(samples.text("a.txt", separator.equals(",") ? text : text.replace("\"4,950\"", "4950").replace("\"", "")
                    .replace(",", separator)));
            assertEquals(3, sheet.rows().get(1).cells().size(), separator);
            assertEquals(NumberStyle.POINT, sheet.numbers(), separator);
        }
        Sheet commas = SampleSheets.only(samples.text("b.csv", "Bus;mpg;USD\nB01;6,2;1.234,50\nB02;6,25;990\n"));
        assertEquals(NumberStyle.COMMA, commas.numbers());
        assertEquals(List.of("Read as text separated by semicolons with a decimal comma."), commas.remarks());
    }

    /** A title over several columns, a number as text, a date, a time, a formula, a failed one, a merged cell and a blank row. */
    @Test
    void aWorkbookAsPeopleMakeThem() throws Exception {
        Path path = samples.workbook("a.xlsx", book -> {
            XSSFSheet sheet = book.createSheet("Fleet");
            sheet.createRow(0).createCell(0).setCellValue("Bus list, spring");
            sheet.addMergedRegion(new CellRangeAddress(0, 0, 0, 4));
            CellStyle date = book.createCellStyle();
            date.setDataFormat(book.createDataFormat().getFormat("m/d/yyyy"));
            CellStyle time = book.createCellStyle();
            time.setDataFormat(book.createDataFormat().getFormat("h:mm AM/PM"));
            Row row = sheet.createRow(2);
            row.createCell(0).setCellValue("07");
            row.createCell(1).setCellValue(45_904);
            row.getCell(1).setCellStyle(date);
            row.createCell(2).setCellValue(0.2743055555555556);
            row.getCell(2).setCellStyle(time);
            row.createCell(3).setCellFormula("2*21");
            book.getCreationHelper().createFormulaEvaluator().evaluateFormulaCell(row.getCell(3));
            row.createCell(4).setCellFormula("1/0");
            book.getCreationHelper().createFormulaEvaluator().evaluateFormulaCell(row.getCell(4));
            sheet.createRow(3).createCell(1).setCellValue(0.1);
            sheet.addMergedRegion(new CellRangeAddress(2, 3, 0, 0));
            book.createSheet("Empty");
        });
        List<Sheet> sheets = SheetReader.read(path, ReadingProgress.NONE);
        assertEquals(1, sheets.size(), "an empty sheet is none");
        Sheet sheet = sheets.get(0);
        assertEquals("a.xlsx, sheet “Fleet”", sheet.place());
        assertEquals(List.of(1, 3, 4), sheet.rows().stream().map(SheetRow::number).toList());
        assertEquals(List.of(new SheetCell(SheetCell.Kind.TEXT, "07"), new SheetCell(SheetCell.Kind.DATE, "2025-09-04"),
                new SheetCell(SheetCell.Kind.DATE, "06:35"), new SheetCell(SheetCell.Kind.NUMBER, "42"),
                new SheetCell(SheetCell.Kind.ERROR, "#DIV/0!")), sheet.rows().get(1).cells());
        assertEquals(List.of("07", "0.1"), SampleSheets.texts(sheet).get(2));
        assertEquals(List.of("Cells merged over several rows count for each of them: A3:A4."), sheet.remarks());
    }

    @Test
    void aFormulaThatWasNeverComputedIsAFault() throws Exception {
        Path path = samples.workbook("a.xlsx", book -> book.createSheet().createRow(0).createCell(0).setCellFormula("1+1"));
        Sheet sheet = SampleSheets.only(path);
        assertEquals(new SheetCell(SheetCell.Kind.ERROR, "formula without a result"), sheet.rows().get(0).cell(0));
    }

    @Test
    void whatIsNoTableIsRefusedWithWhatToDo() throws Exception {
        assertTrue(refusal(samples.bytes("a.xls", new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0, 0, 0, 0}))
                .contains("save it as XLSX without a password"));
        assertTrue(refusal(samples.text("a.pdf", "%PDF-1.7")).contains("PDF"));
        assertTrue(refusal(samples.bytes("a.csv", new byte[] {1, 2, 0, 0, 3, 0, 0, 9})).contains("neither a workbook (XLSX) nor text"));
        assertTrue(refusal(samples.text("a.csv", "\n , \n")).contains("Nothing stands in the file"));
        assertTrue(refusal(samples.text("b.xlsx", "PK\u0003\u0004 no zip at all")).contains("save it again as XLSX"));
        assertTrue(refusal(samples.text("wide.csv", "a" + ",a".repeat(300) + "\n")).contains("at most 300"));
    }

    /** Rows below an open quotation mark stay rows, whether the next mark is met or not. */
    @Test
    void anOpenQuotationMarkIsToldAtItsRowAndSwallowsNothing() throws Exception {
        for (String last : List.of("B04,97000,fine", "B04,97000,\"fine\"")) {
            Sheet sheet = SampleSheets.only(samples.text("a.csv", "Bus,Miles,Note\nB02,99000,\"brake check pending\nB03,98000,fine\n" + last + "\n"));
            assertEquals(List.of("Bus", "B02", "B03", "B04"), sheet.rows().stream().map(r -> r.cell(0).text()).toList());
            assertEquals(List.of("a.csv, row 2: The quotation mark before “brake check pending” is not closed; close it behind the text of its cell, "
                    + "or remove it."), sheet.problems().stream().map(ImportProblem::toString).toList());
            assertEquals("fine", sheet.rows().get(3).cell(2).text());
        }
    }

    @Test
    void aQuotedCellThatHoldsRowsIsAProblem() throws Exception {
        Sheet sheet = SampleSheets.only(samples.text("a.csv", "Bus,Miles,Use,Note\nB02,99000,spare,\"brakes\nB03,98000,spare,fine\nB04,97000,spare,good\"\n"
                + "B05,96000,spare,\"two lines,\nof a \"\"note\"\"\"\n"));
        assertEquals(List.of("a.csv, row 2: A quoted cell of this row holds lines that look like rows of the table; close its quotation mark behind "
                + "the text of the cell, or take the line ends out of it."), sheet.problems().stream().map(ImportProblem::toString).toList());
        assertEquals("two lines,\nof a \"note\"", sheet.rows().get(2).cell(3).text());
    }

    @Test
    void aProblemOfTheFileKeepsItOut() throws Exception {
        SheetImport.Preview preview = SampleSheets.preview(samples.text("a.csv", "Bus,Date,Odometer\nB01,2026-06-30,200000 \nB02,2026-06-30,\"200000\n"),
                SampleSheets.example());
        assertTrue(preview.problems().stream().anyMatch(p -> p.row() == 3 && p.message().startsWith("The quotation mark before “200000” is not closed")),
                preview.problems().toString());
    }

    /** Neither the row nor the cell is held to its end. */
    @Test
    @Timeout(20)
    void aHugeRowAndAHugeCellAreRefused() throws Exception {
        assertTrue(refusal(samples.text("row.csv", "a,".repeat(10_000_000))).contains("Row 1 has more than 300 columns"));
        assertTrue(refusal(samples.text("cell.csv", "Bus,Note\nB01," + "a".repeat(40_000) + "\n"))
                .contains("Row 2, column B holds 40,000 characters; a cell may hold at most 32,767."));
    }

    @Test
    void aTextOfTooManyCellsOrCharactersIsRefused() throws Exception {
        assertTrue(refusal(samples.text("a.csv", (",1".repeat(99) + "\n").repeat(20_001))).contains("more than 2,000,000 cells"));
        assertTrue(refusal(samples.text("b.csv", ("a".repeat(30_000) + ",b\n").repeat(1_400))).contains("more than 40,000,000 characters"));
    }

    @Test
    void aTextOfTooManyRowsIsRefused() throws Exception {
        assertTrue(refusal(samples.text("a.csv", "1,2\n".repeat(100_001))).contains("more than 100,000 rows"));
    }

    /** A sheet of ten million rows in a small zip. */
    @Test
    @Timeout(60)
    void aBombIsRefused() throws Exception {
        Path bomb = sheet("bomb.xlsx", out -> repeat(out, "<row><c><v>1</v></c></row>", 10_000_000));
        assertTrue(Files.size(bomb) < 2_000_000);
        String message = refusal(bomb);
        assertTrue(message.contains("save it again"), message);
    }

    /** Rows that pack badly, so that no ratio gives them away. */
    @Test
    @Timeout(60)
    void aSheetOfTooManyRowsIsRefused() throws Exception {
        Random random = new Random(1);
        assertTrue(refusal(sheet("rows.xlsx", out -> {
            for (int i = 0; i <= 100_000; i++) {
                out.write(("<row><c><v>" + random.nextInt() + "</v></c></row>").getBytes(StandardCharsets.UTF_8));
            }
        })).contains("more than 100,000 rows"));
    }

    @Test
    @Timeout(60)
    void aWorkbookOfTooManyCellsIsRefused() throws Exception {
        Random random = new Random(1);
        assertTrue(refusal(sheet("cells.xlsx", out -> {
            for (int i = 0; i < 10_001; i++) {
                out.write("<row>".getBytes(StandardCharsets.UTF_8));
                for (int column = 0; column < 200; column++) {
                    out.write(("<c><v>" + random.nextInt() + "</v></c>").getBytes(StandardCharsets.UTF_8));
                }
                out.write("</row>".getBytes(StandardCharsets.UTF_8));
            }
        })).contains("more than 2,000,000 cells"));
    }

    /** Blank cells before a far one are held too. */
    @Test
    @Timeout(60)
    void farCellsCountWithThoseBeforeThem() throws Exception {
        Random random = new Random(1);
        assertTrue(refusal(sheet("far.xlsx", out -> {
            for (int i = 1; i <= 10_000; i++) {
                out.write(("<row r=\"" + i + "\"><c r=\"KN" + i + "\"><v>" + random.nextInt() + "</v></c></row>").getBytes(StandardCharsets.UTF_8));
            }
        })).contains("more than 2,000,000 cells"));
    }

    @Test
    @Timeout(60)
    void tooManySharedTextsAreRefused() throws Exception {
        Random random = new Random(1);
        Path small = samples.workbook("small.xlsx", book -> book.createSheet().createRow(0).createCell(0).setCellValue("text"));
        Path many = folder.resolve("texts.xlsx");
        replace(small, "xl/sharedStrings.xml", many, out -> {
            out.write("<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">".getBytes(StandardCharsets.UTF_8));
            for (int i = 0; i <= 2_000_000; i++) {
                out.write(("<si><t>" + random.nextInt() + "</t></si>").getBytes(StandardCharsets.UTF_8));
            }
            out.write("</sst>".getBytes(StandardCharsets.UTF_8));
        });
        assertTrue(refusal(many).contains("more than 2,000,000 cells"));
    }

    @Test
    void aLongCellOfAWorkbookIsRefused() throws Exception {
        String begin = "<row r=\"1\"><c r=\"B1\" t=\"inlineStr\"><is><t>";
        assertTrue(refusal(sheet("long.xlsx", out -> out.write((begin + "a".repeat(32_768) + "</t></is></c></row>").getBytes(StandardCharsets.UTF_8))))
                .contains("Cell B1 holds 32,768 characters; a cell may hold at most 32,767."));
    }

    /** Formats are held as a whole, so that they may not be large. */
    @Test
    @Timeout(60)
    void largePartsBesideTheSheetsAreRefused() throws Exception {
        Random random = new Random(1);
        Path small = samples.workbook("small.xlsx", book -> book.createSheet().createRow(0).createCell(0).setCellValue(1));
        Path large = folder.resolve("styles.xlsx");
        replace(small, "xl/styles.xml", large, out -> {
            for (int i = 0; i < 1_000_000; i++) {
                out.write(("<font i=\"" + random.nextInt() + "\"/>").getBytes(StandardCharsets.UTF_8));
            }
        });
        assertTrue(refusal(large).contains("Part xl/styles.xml of the workbook unpacks to more than is read"));
    }

    @Test
    @Timeout(20)
    void overlappingAndManyMergesAreRefused() throws Exception {
        assertTrue(refusal(merges(3000, i -> "A1:A" + (90_000 + i))).contains("The merged ranges A1:A90000 and A1:A90001 overlap"));
        assertTrue(refusal(merges(20_001, i -> "A" + (2 * i + 1) + ":A" + (2 * i + 2))).contains("more than 20,000 merged ranges"));
        assertEquals(
                List.of("Cells merged over several rows count for each of them: A1:A2, A3:A4, A5:A6, A7:A8, A9:A10, A11:A12, A13:A14, A15:A16 and 2 more."),
                SampleSheets.only(merges(10, i -> "A" + (2 * i + 1) + ":A" + (2 * i + 2))).remarks());
    }

    private Path merges(int number, IntFunction<String> range) throws IOException {
        return sheet("merges.xlsx", out -> {
            repeat(out, "<row><c><v>1</v></c></row>", 20);
            out.write("</sheetData><mergeCells>".getBytes(StandardCharsets.UTF_8));
            for (int i = 0; i < number; i++) {
                out.write(("<mergeCell ref=\"" + range.apply(i) + "\"/>").getBytes(StandardCharsets.UTF_8));
            }
            out.write("</mergeCells><sheetData>".getBytes(StandardCharsets.UTF_8));
        });
    }

    private static void repeat(OutputStream out, String text, int times) throws IOException {
        byte[] thousand = text.repeat(Math.min(1000, times)).getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < Math.max(1, times / 1000); i++) {
            out.write(thousand);
        }
    }

    /** A workbook with a sheet of given rows. */
    private Path sheet(String name, Content rows) throws IOException {
        Path small = samples.workbook("small.xlsx", book -> book.createSheet().createRow(0).createCell(0).setCellValue(1));
        Path path = folder.resolve(name);
        replace(small, "xl/worksheets/sheet1.xml", path, out -> {
            out.write("<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>".getBytes(StandardCharsets.UTF_8));
            rows.write(out);
            out.write("</sheetData></worksheet>".getBytes(StandardCharsets.UTF_8));
        });
        return path;
    }

    /** An entity that names a file of the machine is not opened. */
    @Test
    void entitiesAreRefused() throws Exception {
        Path secret = samples.text("secret.txt", "secret");
        Path small = samples.workbook("small.xlsx", book -> book.createSheet().createRow(0).createCell(0).setCellValue(1));
        Path hostile = folder.resolve("hostile.xlsx");
        replace(small, "xl/worksheets/sheet1.xml", hostile, out -> out.write(("<!DOCTYPE x [<!ENTITY e SYSTEM \"" + secret.toUri() + "\">]>"
                + "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData><row><c t=\"str\"><v>&e;</v></c></row>"
                + "</sheetData></worksheet>").getBytes(StandardCharsets.UTF_8)));
        assertTrue(refusal(hostile).contains("save it again as XLSX"));
    }

    @Test
    void readingCanBeStopped() throws Exception {
        Path path = samples.workbook("a.xlsx", book -> book.createSheet().createRow(0).createCell(0).setCellValue(1));
        assertThrows(CancellationException.class, () -> SheetReader.read(path, new ReadingProgress() {
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

    private interface Content {
        void write(OutputStream out) throws IOException;
    }

    private static void replace(Path from, String part, Path to, Content content) throws IOException {
        try (ZipInputStream in = new ZipInputStream(Files.newInputStream(from)); ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(to))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                out.putNextEntry(new ZipEntry(entry.getName()));
                if (entry.getName().equals(part)) {
                    content.write(out);
                } else {
                    in.transferTo(out);
                }
            }
        }
    }
}
