package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.progress.Progress;
import org.amberyard.report.document.Block;
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
    private static PaperInput in;
    private static Document document;

    @TempDir
    Path folder;

    @BeforeAll
    static void evaluate() {
        in = EXAMPLE.in(EXAMPLE.study(), PaperChoices.STANDARD);
        document = GrantSet.of(new PaperInput(in.result(), in.planIndex(), in.facts(), ExamplePapers.tables(GrantTable.T4,
                GrantTable.T5, GrantTable.T7, GrantTable.T8)));
    }

    private Path written(Document of, DocumentFormat format) throws Exception {
        return Files.write(folder.resolve(of.name() + "." + format.ending()), format.write(of));
    }

    /** Figures as whole words, as often as they are printed: a nought within a number proves nothing. */
    private static void hasAllFigures(String text, Document of) {
        Map<String, Integer> found = new HashMap<>();
        for (String word : text.split("\\s+")) {
            found.merge(word.replaceAll("[;.]$", ""), 1, Integer::sum);
        }
        figures(of).forEach((figure, times) -> assertTrue(found.getOrDefault(figure, 0) >= times,
                () -> of.name() + " has " + figure + " " + times + " times, the reader found " + found.getOrDefault(figure, 0)));
        said(of).forEach(figure -> assertTrue(found.containsKey(figure), () -> of.name() + " nowhere says " + figure));
    }

    private static Stream<DataTable> onPaper(Block block) {
        return block instanceof Block.Condensed condensed ? condensed.onPaper().stream()
                : block instanceof DataTable table ? Stream.of(table) : Stream.empty();
    }

    private static Map<String, Integer> figures(Document of) {
        Map<String, Integer> figures = new HashMap<>();
        of.sections().stream().flatMap(s -> s.blocks().stream()).flatMap(OutsideReadersTest::onPaper)
                .forEach(table -> cells(table, i -> true).forEach(figure -> figures.merge(figure, 1, Integer::sum)));
        assertTrue(figures.values().stream().mapToInt(Integer::intValue).sum() > 20, of.name());
        return figures;
    }

    /** Figures of tables that pages have in short: none is lost, though what rows repeat is said once; factors are in units of the study. */
    private static Set<String> said(Document of) {
        return of.sections().stream().flatMap(s -> s.blocks().stream()).filter(Block.Condensed.class::isInstance).map(b -> ((Block.Condensed) b)
                .table()).flatMap(t -> cells(t, i -> !t.columns().get(i).label().equals("Factor, metric"))).collect(Collectors.toSet());
    }

    private static Stream<String> cells(DataTable table, IntPredicate columns) {
        return table.rows().stream().flatMap(row -> IntStream.range(0, table.columns().size()).filter(columns).filter(i -> row.cells().get(
                i) instanceof BigDecimal).mapToObj(i -> table.printed(row, i).replace(" %", "")));
    }

    @Test
    void aPdfReaderFindsEveryFigureOfEveryDocument() throws Exception {
        OutsideProgram.require("pdftotext", "-v");
        for (Document of : List.of(GrantSet.of(in), BoardMemo.of(in), UtilityLetter.of(in))) {
            hasAllFigures(OutsideProgram.text(written(of, DocumentFormat.PDF)), of);
        }
    }

    @Test
    void aBrowserFindsEveryFigureOfEveryDocument() throws Exception {
        OutsideProgram.require("chromium", "--version");
        for (Document of : List.of(GrantSet.of(in), BoardMemo.of(in), UtilityLetter.of(in), ShopPaper.of(in),
                Appendix.of(in, Progress.NONE))) {
            String dom = OutsideProgram.dom(written(of, DocumentFormat.HTML), folder);
            hasAllFigures(dom.replaceAll("<[^>]*>", " "), of);
        }
    }

    @Test
    void aWordProcessorFindsEveryFigure() throws Exception {
        OutsideProgram.require("soffice", "--version");
        OutsideProgram.require("pdftotext", "-v");
        for (Document of : List.of(document, BoardMemo.of(in))) {
            OutsideProgram.convert("pdf", written(of, DocumentFormat.DOCX), folder);
            hasAllFigures(OutsideProgram.text(folder.resolve(of.name() + ".pdf")), of);
        }
    }

    private static boolean hasTotal(DataTable table) {
        return table.rows().stream().anyMatch(row -> row.kind() == DataTable.Kind.TOTAL);
    }

    @Test
    void aSpreadsheetProgramReadsTheFiguresAndSums() throws Exception {
        OutsideProgram.require("soffice", "--version");
        OutsideProgram.convert("csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1",
                written(document, DocumentFormat.XLSX), folder);
        DataTable table = document.tables().stream().filter(OutsideReadersTest::hasTotal).findFirst().orElseThrow();
        Path csv = folder.resolve(document.name() + "-" + table.name() + ".csv");
        try (CSVParser parser = CSVParser.parse(Files.readString(csv), CSVFormat.DEFAULT)) {
            List<CSVRecord> records = parser.getRecords();
            CSVRecord total = records.stream().filter(r -> r.get(0).equals("Total")).findFirst().orElseThrow();
            DataTable.Row last = table.rows().stream().filter(r -> r.kind() == DataTable.Kind.TOTAL).findFirst().orElseThrow();
            for (int i = 1; i < table.columns().size(); i++) {
                if (last.cells().get(i) instanceof BigDecimal) {
                    assertEquals(table.printed(last, i).replace(",", ""), total.get(i).replace(",", ""));
                }
            }
        }
    }
}
