package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.amberyard.core.progress.Progress;
import org.amberyard.model.study.Study;
import org.amberyard.report.document.DocumentFormat;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SubmissionTest {
    private static final ExamplePapers EXAMPLE = new ExamplePapers();
    private static final DocumentFolder.Wanted WANTED = new DocumentFolder.Wanted(Set.of(DocumentKind.BOARD), Set.of(
            DocumentFormat.HTML));
    private static PaperInput in;

    @TempDir
    Path folder;

    @BeforeAll
    static void evaluate() {
        in = EXAMPLE.in(EXAMPLE.study(), PaperChoices.STANDARD);
    }

    private Path frozen() throws IOException {
        Path into = folder.resolve("submission");
        Submission.freeze(in, EXAMPLE.study(), WANTED, into, Progress.NONE);
        return into;
    }

    @Test
    void aSubmissionHoldsStudyInputsDocumentsAndTheirSumsReadOnly() throws Exception {
        Path into = frozen();
        List<String> lines = Files.readAllLines(into.resolve("manifest.sha256"));
        assertEquals(List.of("about.txt", "study.amberyard", "inputs.csv", "figures.json", "board-memo.html"),
                lines.stream().map(l -> l.substring(66)).toList());
        assertTrue(lines.stream().allMatch(l -> l.matches("[0-9a-f]{64}  .+")), "as sha256sum reads it");
        try (Stream<Path> files = Files.list(into)) {
            assertTrue(files.allMatch(f -> Files.isRegularFile(f) && isReadOnly(f)));
        }
    }

    /** Who may do anything may write what is read-only, so the mode is asked for and not tried. */
    private static boolean isReadOnly(Path file) {
        try {
            return Files.getPosixFilePermissions(file).stream().noneMatch(p -> p.name().endsWith("WRITE"));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void theSameStudyDiffersInNothing() throws Exception {
        SubmissionChanges same = SubmissionChanges.of(frozen(), EXAMPLE.study(), in.result());
        assertTrue(same.isEmpty(), same.lines().toString());
        assertEquals(List.of("The study and all its figures are those of the submission."), same.lines());
    }

    @Test
    void aChangedPriceIsNamedWithTheFiguresThatFollow() throws Exception {
        Path into = frozen();
        Study later = EXAMPLE.study();
        later.getVehicleTypes().stream().filter(t -> t.getName().equals("Electric C 150")).forEach(t -> t.setPurchasePrice(340_000));
        SubmissionChanges changes = SubmissionChanges.of(into, later, EXAMPLE.evaluated(later));
        assertEquals(List.of(), changes.broken());
        assertEquals(List.of("electric bus type Electric C 150, Price: 338000 USD → 340000 USD"), changes.inputs());
        assertTrue(changes.figures().stream().anyMatch(f -> f.startsWith("T5a. Sources of funds, Own money, cash, Amount (USD): 4172705 → ")),
                changes.figures().toString());
        assertTrue(changes.lines().get(0).equals("Inputs that differ, as frozen and now: 1"), changes.lines().get(0));
    }

    @Test
    void aTouchedFileIsFound() throws Exception {
        Path into = frozen();
        Path memo = into.resolve("board-memo.html");
        assertTrue(memo.toFile().setWritable(true));
        Files.writeString(memo, "other");
        Files.delete(into.resolve("inputs.csv"));
        assertEquals(List.of("inputs.csv is missing.", "board-memo.html is not as it was frozen: its SHA-256 is another."),
                SubmissionChanges.of(into, EXAMPLE.study(), in.result()).broken());
    }

    @Test
    void aFolderInUseIsRefusedAndAStopLeavesNothing() throws Exception {
        Files.writeString(folder.resolve("mine.txt"), "mine");
        FileAlreadyExistsException used = assertThrows(FileAlreadyExistsException.class, () -> Submission.freeze(in, EXAMPLE.study(),
                WANTED, folder, Progress.NONE));
        assertTrue(used.getMessage().contains("a folder of its own"), used.getMessage());
        Path stopped = folder.resolve("stopped");
        assertThrows(CancellationException.class, () -> Submission.freeze(in, EXAMPLE.study(), WANTED, stopped, share -> {
            throw new CancellationException();
        }));
        assertFalse(Files.exists(stopped));
        assertThrows(NoSuchFileException.class, () -> SubmissionChanges.of(folder, EXAMPLE.study(), in.result()));
    }
}
