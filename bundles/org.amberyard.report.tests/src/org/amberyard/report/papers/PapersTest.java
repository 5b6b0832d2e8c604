package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.amberyard.core.plan.BudgetYear;
import org.amberyard.core.progress.Progress;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.DocumentFormat;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PapersTest {
    private static final ExamplePapers EXAMPLE = new ExamplePapers();
    private static final int MEMO_PAGES = 3;
    private static PaperInput in;

    @TempDir
    Path folder;

    @BeforeAll
    static void evaluate() {
        in = EXAMPLE.in(EXAMPLE.study(), PaperChoices.STANDARD);
    }

    @Test
    void theMemoHasThreePagesAndItsBudgetIsThatOfTheResults() throws Exception {
        Document memo = BoardMemo.of(in);
        try (PDDocument pdf = Loader.loadPDF(DocumentFormat.PDF.write(memo))) {
            assertEquals(MEMO_PAGES, pdf.getNumberOfPages());
        }
        DataTable budget = memo.tables().get(1);
        int appropriated = budget.columns().stream().map(DataTable.Column::label).toList().indexOf("To appropriate");
        for (int year = 0; year < in.study().years(); year++) {
            BudgetYear of = in.plan().finance().budget().get(year);
            assertEquals(of.appropriation(), ((BigDecimal) budget.rows().get(year).cells().get(appropriated)).doubleValue(), 4);
        }
        assertEquals("1,264,622", memo.tables().get(0).printed(memo.tables().get(0).rows().get(1), 2));
    }

    @Test
    void theLetterHasTheItemsOfTheLoadLetterAndTheLoadOfEachYear() {
        Document letter = UtilityLetter.of(in);
        List<ResultLine> items = ResultLine.of(in, "load_letter").stream().filter(l -> !l.text("item").equals("Caution")).toList();
        DataTable first = letter.tables().get(0);
        assertEquals(items.stream().map(l -> l.text("value")).toList(), first.rows().stream().map(r -> first.printed(r, 1))
                .toList());
        assertEquals(in.study().years(), letter.tables().get(1).rows().size());
    }

    @Test
    void theCalendarHasEveryTaskThatFallsDueInTheFirstYear() {
        Document calendar = ShopPaper.of(in);
        long due = in.plan().upkeep().stream().filter(u -> u.record().year() == 0).mapToLong(u -> u.calendar().due().size()).sum();
        long printed = calendar.tables().stream().skip(2).flatMap(t -> t.rows().stream()).filter(r ->
                r.kind() == DataTable.Kind.LINE).count();
        assertEquals(due, printed);
        assertTrue(due > 100);
    }

    @Test
    void theAppendixHoldsEveryInputAndEveryTableOfThePlan() {
        Document appendix = Appendix.of(in, Progress.NONE);
        DataTable inputs = appendix.tables().get(appendix.tables().size() - 1);
        assertEquals(in.facts().inputs().rows().size(), inputs.rows().size());
        DataTable years = appendix.tables().stream().filter(t -> t.name().equals("vehicle_years")).findFirst().orElseThrow();
        assertEquals(in.plan().fleet().years().size(), years.rows().size());
    }

    @Test
    void documentsAreWrittenTwiceTheSameAllOrNone() throws Exception {
        DocumentFolder.Wanted wanted = new DocumentFolder.Wanted(Set.of(DocumentKind.UTILITY, DocumentKind.CASH_FLOW),
                Set.of(DocumentFormat.values()));
        List<Path> first = DocumentFolder.write(in, wanted, folder.resolve("first"), Progress.NONE);
        List<Path> second = DocumentFolder.write(in, wanted, folder.resolve("second"), Progress.NONE);
        assertEquals(DocumentFormat.values().length + 1, first.size(), "the letter in every format, and the workbook");
        for (int i = 0; i < first.size(); i++) {
            assertArrayEquals(Files.readAllBytes(first.get(i)), Files.readAllBytes(second.get(i)), first.get(i).toString());
        }
        Path third = folder.resolve("third");
        assertThrows(CancellationException.class, () -> DocumentFolder.write(in, wanted, third, share -> {
            if (share > 0.3) {
                throw new CancellationException();
            }
        }));
        try (Stream<Path> left = Files.list(third)) {
            assertEquals(0, left.count());
        }
    }

    @Test
    void aDateIsPrintedOnlyWhereItIsAsked() {
        assertFalse(in.documentFacts().stream().anyMatch(f -> f.label().equals("Evaluated")));
        PaperChoices dated = new PaperChoices(List.of(), Optional.empty(), false, Optional.of("2026-08-31"));
        PaperInput of = new PaperInput(in.result(), in.planIndex(), in.facts(), dated);
        assertTrue(of.documentFacts().contains(new Document.Fact("Evaluated", "2026-08-31")));
        assertTrue(of.running("Memo").endsWith("2026-08-31"));
    }
}
