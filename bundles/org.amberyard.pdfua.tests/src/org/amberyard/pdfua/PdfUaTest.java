package org.amberyard.pdfua;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.amberyard.charts.AnnualCostChart;
import org.amberyard.charts.ChartTheme;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.DocumentFormat;
import org.amberyard.report.document.Section;
import org.amberyard.report.document.TableBuilder;
import org.amberyard.report.papers.DocumentFolder;
import org.amberyard.report.papers.DocumentKind;
import org.amberyard.report.papers.PaperChoices;
import org.amberyard.report.papers.PaperInput;
import org.amberyard.report.papers.StudyFacts;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** PDFs that leave the program can be read aloud: they conform to ISO 14289-1:2014 as far as a machine can tell. */
class PdfUaTest {
    private static final Path EXAMPLE = Path.of(System.getProperty("basedir", ".")).toAbsolutePath()
            .resolve("../../examples/ostrick-vale/ostrick-vale.amberyard").normalize();
    private static final int ELECTRIC = 1;
    private static final int ROWS = 120;

    private static Study study;
    private static StudyResult result;

    @TempDir
    private Path folder;

    @BeforeAll
    static void evaluate() throws StudyFileException {
        study = StudyFile.load(EXAMPLE);
        result = new StudyEvaluator().evaluate(StudyCompiler.compile(study));
    }

    @Test
    void theGrantSetAndTheMemoConform() throws IOException {
        PaperInput in = new PaperInput(result, ELECTRIC, StudyFacts.of(study), PaperChoices.STANDARD);
        Set<DocumentKind> kinds = Set.of(DocumentKind.GRANT, DocumentKind.BOARD);
        List<Path> files = DocumentFolder.write(in, new DocumentFolder.Wanted(kinds, Set.of(DocumentFormat.PDF)), folder, Progress.NONE);
        assertEquals(kinds.size(), files.size());
        for (Path file : files) {
            assertEquals(List.of(), Validator.faults(Files.readAllBytes(file)), file.getFileName().toString());
        }
    }

    /** What the appendix is made of and other documents are not: contents, long tables in short, charts between them. */
    @Test
    void contentsLongTablesAndListsConform() throws IOException {
        String source = "Agency of factors, inventory of greenhouse gases, table 4, medium and heavy engines";
        DataTable table = new TableBuilder<Integer>("Long", "Table 1. Long").text("Name", r -> "row " + r).number("Figure", "t CO2e",
                CellFormat.CENTS, r -> r / 7.0).text("Source", r -> r % 2 == 0 ? source : "other " + source).mark("A mark.").of(IntStream
                        .range(0, ROWS).boxed().toList());
        Document document = new Document("d", "Title & <title>", "Subject", List.of(new Document.Fact("Plan", "A")), "Foot", "Mark", List.of(
                Section.of("Contents", new Block.Contents()), Section.of("Words", new Block.Paragraph("Plain."), new Block.Bullets(List.of(
                        "One.", "Two.")), new Block.Caution("Careful."), new Block.OnSheet(table)),
                new Section("Wide", true, true, List.of(Block.Condensed.of(table), new Block.Figure(AnnualCostChart.of(result, UnitSystem.US,
                        ChartTheme.light()), "Figure 1. Costs", 0.5)))));
        assertEquals(List.of(), Validator.faults(DocumentFormat.PDF.write(document)));
    }

    @Test
    void aFileWithoutTagsIsRefused() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument pdf = new PDDocument()) {
            pdf.addPage(new PDPage());
            pdf.save(out);
        }
        List<String> faults = Validator.faults(out.toByteArray());
        assertTrue(faults.stream().anyMatch(f -> f.startsWith("7.1: ")), faults.toString());
    }
}
