package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.DocumentFormat;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Documents as programs of others read them: every figure is there as it was printed. */
class OutsideReadersTest {
    private static final ExamplePapers EXAMPLE = new ExamplePapers();
    private static Document document;

    @TempDir
    Path folder;

    @BeforeAll
    static void evaluate() {
        document = GrantSet.of(EXAMPLE.in(EXAMPLE.study(), ExamplePapers.tables(GrantTable.T4, GrantTable.T5, GrantTable.T7,
                GrantTable.T8)));
    }

    private Path written(DocumentFormat format) throws Exception {
        return Files.write(folder.resolve("grant." + format.ending()), format.write(document));
    }

    private static void hasAllFigures(String text, DataTable table) {
        for (DataTable.Row row : table.rows()) {
            for (int i = 0; i < table.columns().size(); i++) {
                if (row.cells().get(i) instanceof BigDecimal) {
                    assertTrue(text.contains(table.printed(row, i)), table.title() + " misses " + table.printed(row, i));
                }
            }
        }
    }

    @Test
    void aPdfReaderFindsEveryFigure() throws Exception {
        OutsideProgram.require("pdftotext", "-v");
        String text = OutsideProgram.text(written(DocumentFormat.PDF));
        document.tables().forEach(t -> hasAllFigures(text, t));
    }

    @Test
    void aWordProcessorFindsEveryFigure() throws Exception {
        OutsideProgram.require("soffice", "--version");
        OutsideProgram.require("pdftotext", "-v");
        OutsideProgram.convert("pdf", written(DocumentFormat.DOCX), folder);
        String text = OutsideProgram.text(folder.resolve("grant.pdf"));
        document.tables().forEach(t -> hasAllFigures(text, t));
    }

    @Test
    void aSpreadsheetProgramReadsTheFiguresAndSums() throws Exception {
        OutsideProgram.require("soffice", "--version");
        OutsideProgram.convert("csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,2",
                written(DocumentFormat.XLSX), folder);
        DataTable table = document.tables().get(0);
        Path csv = folder.resolve("grant-" + table.name() + ".csv");
        try (CSVParser parser = CSVParser.parse(Files.readString(csv), CSVFormat.DEFAULT)) {
            List<CSVRecord> records = parser.getRecords();
            CSVRecord total = records.stream().filter(r -> r.get(0).equals("Total")).findFirst().orElseThrow();
            DataTable.Row last = table.rows().get(table.rows().size() - 1);
            for (int i = 1; i < table.columns().size(); i++) {
                if (last.cells().get(i) instanceof BigDecimal) {
                    assertEquals(table.printed(last, i).replace(",", ""), total.get(i).replace(",", ""));
                }
            }
        }
    }
}
