package org.amberyard.report.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.amberyard.report.SchemaCheck;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables for programs hold what is printed: every figure, unit, mark and note. */
class DataFormatsTest {
    private static final Document DOCUMENT = SampleDocument.of();
    private static final DataTable TABLE = DOCUMENT.tables().get(0);

    private static Map<String, String> files() throws IOException {
        Map<String, String> files = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(DocumentFormat.CSV.write(DOCUMENT)))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                files.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return files;
    }

    private static List<CSVRecord> records(String csv) throws IOException {
        return CSVFormat.RFC4180.parse(new StringReader(csv)).getRecords();
    }

    @Test
    void everyTableIsAFileWithItsFiguresAndWhatItMustSay() throws IOException {
        Map<String, String> files = files();
        assertEquals(List.of("T1_a_b.csv", "Long.csv", "contents.csv"), List.copyOf(files.keySet()));
        List<CSVRecord> records = records(files.get("T1_a_b.csv"));
        assertEquals(List.of("Words", "Year", "Cost (USD)", "Share (%)", "Owner", "Mark"), records.get(0).toList());
        assertEquals(TABLE.rows().size() + 1, records.size());
        assertEquals("'" + SampleDocument.HOSTILE, records.get(1).get(0), "a spreadsheet takes it for words");
        for (int row = 0; row < SampleDocument.ROWS; row++) {
            assertEquals(0, new BigDecimal(records.get(row + 1).get(2)).compareTo((BigDecimal) TABLE.rows().get(row).cells().get(2)));
        }
        assertEquals("", records.get(2).get(3), "what is not known is empty");
        assertEquals("0.7", records.get(3).get(3), "shares are in per cent");
        assertEquals("Not for submission: a sample.", records.get(1).get(5));
        assertTrue(files.get("T1_a_b.csv").endsWith("\r\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1"})
    void wordsThatASpreadsheetWouldComputeStayWords(String hostile) throws IOException {
        DataTable table = new TableBuilder<String>("T", "Table").text("Words", w -> w).of(List.of(hostile));
        Document document = new Document("d", "D", "", List.of(), hostile, "", List.of(Section.of("S", table)));
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(DocumentFormat.CSV.write(document)))) {
            zip.getNextEntry();
            assertEquals("'" + hostile, records(new String(zip.readAllBytes(), StandardCharsets.UTF_8)).get(1).get(0));
        }
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(DocumentFormat.XLSX.write(document)))) {
            Cell cell = workbook.getSheet("T").getRow(3).getCell(0);
            assertEquals(CellType.STRING, cell.getCellType());
            assertEquals("@", cell.getCellStyle().getDataFormatString(), "stays words when it is edited");
        }
    }

    @Test
    void datesAreDatesOfTheSpreadsheet() throws IOException {
        DataTable table = new TableBuilder<String>("T", "Table").text("When", w -> w).of(List.of("2026-05-31", "2026-02-30", "B01-2"));
        Document document = new Document("d", "D", "", List.of(), "running", "", List.of(Section.of("S", table)));
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(DocumentFormat.XLSX.write(document)))) {
            Cell date = workbook.getSheet("T").getRow(3).getCell(0);
            assertTrue(DateUtil.isCellDateFormatted(date));
            assertEquals(LocalDate.of(2026, 5, 31), date.getLocalDateTimeCellValue().toLocalDate());
            assertEquals("2026-05-31", new DataFormatter().formatCellValue(date));
            assertEquals("2026-02-30", workbook.getSheet("T").getRow(4).getCell(0).getStringCellValue(), "no such day");
            assertEquals("running", workbook.getSheet("T").getRow(7).getCell(0).getStringCellValue());
        }
    }

    @Test
    void theContentsNameFilesFactsAndNotes() throws IOException {
        List<CSVRecord> contents = records(files().get("contents.csv"));
        assertEquals(List.of("", "Plan", "A \"plan\"", ""), contents.get(1).toList());
        assertEquals("T1_a_b.csv", contents.get(2).get(0));
        assertEquals(String.join(" ", TABLE.notes()), contents.get(2).get(3));
    }

    private static JsonObject json() throws IOException {
        return JsonParser.parseString(new String(DocumentFormat.JSON.write(DOCUMENT), StandardCharsets.UTF_8)).getAsJsonObject();
    }

    private static JsonElement schema() throws IOException {
        try (InputStream in = Document.class.getResourceAsStream("document.schema.json")) {
            return JsonParser.parseString(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    @Test
    void jsonIsAsItsSchemaLaysDown() throws IOException {
        assertEquals(List.of(), SchemaCheck.violations(schema(), json(), "$"));
        JsonObject wrong = json();
        wrong.addProperty("made_at", "now");
        wrong.getAsJsonArray("tables").get(0).getAsJsonObject().remove("notes");
        assertEquals(2, SchemaCheck.violations(schema(), wrong, "$").size());
    }

    @Test
    void jsonHasTheFiguresAsPrinted() throws IOException {
        JsonObject table = json().getAsJsonArray("tables").get(0).getAsJsonObject();
        JsonArray rows = table.getAsJsonArray("rows");
        assertEquals(TABLE.rows().size(), rows.size());
        for (int row = 0; row < rows.size(); row++) {
            JsonElement cost = rows.get(row).getAsJsonObject().getAsJsonArray("cells").get(2);
            assertEquals(TABLE.rows().get(row).cells().get(2), cost.getAsBigDecimal());
        }
        JsonObject share = table.getAsJsonArray("columns").get(3).getAsJsonObject();
        assertEquals("%", share.get("unit").getAsString());
        assertEquals("percent", share.get("type").getAsString());
        assertFalse(share.get("to_fill").getAsBoolean());
        assertEquals("total", rows.get(rows.size() - 1).getAsJsonObject().get("kind").getAsString());
        assertEquals(SampleDocument.HOSTILE, rows.get(0).getAsJsonObject().getAsJsonArray("cells").get(0).getAsString());
    }
}
