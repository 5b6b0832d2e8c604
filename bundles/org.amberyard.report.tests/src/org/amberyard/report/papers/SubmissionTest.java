package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.UnaryOperator;
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
    static Path once;

    @TempDir
    Path folder;

    @BeforeAll
    static void freezeOnce() throws IOException {
        in = EXAMPLE.in(EXAMPLE.study(), PaperChoices.STANDARD);
        Submission.freeze(in, EXAMPLE.study(), WANTED, LocalDate.of(2026, 8, 31), once.resolve("submission"), Progress.NONE);
    }

    /** A copy, to be spoilt. */
    private Path frozen() throws IOException {
        return copy("submission");
    }

    private Path copy(String name) throws IOException {
        Path into = Files.createDirectory(folder.resolve(name));
        try (Stream<Path> files = Files.list(once.resolve("submission"))) {
            for (Path file : files.toList()) {
                Files.copy(file, into.resolve(file.getFileName()), StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
        return into;
    }

    private static void edit(Path file, UnaryOperator<List<String>> edit) throws IOException {
        assertTrue(file.toFile().setWritable(true));
        Files.write(file, edit.apply(new ArrayList<>(Files.readAllLines(file))));
    }

    private static List<String> without(List<String> lines, String word) {
        return lines.stream().filter(l -> !l.contains(word)).toList();
    }

    @Test
    void aSubmissionHoldsStudyInputsDocumentsAndTheirSumsReadOnly() throws Exception {
        Path into = once.resolve("submission");
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
        SubmissionChanges same = SubmissionChanges.of(frozen(), EXAMPLE.study(), in.result(), Optional.empty());
        assertTrue(same.isEmpty(), same.lines().toString());
        assertEquals("The study and all its figures are those of the submission.", same.lines().get(0));
        assertTrue(same.lines().get(1).matches("manifest.sha256 has SHA-256 [0-9a-f]{64}; it must be the sum that was printed at freezing: "
                + "whether documents were exchanged together with the manifest cannot be told without its sum."),
                same.lines().get(1));
    }

    @Test
    void aChangedPriceIsNamedWithTheFiguresThatFollow() throws Exception {
        Path into = frozen();
        Study later = EXAMPLE.study();
        later.getVehicleTypes().stream().filter(t -> t.getName().equals("Electric C 150")).forEach(t -> t.setPurchasePrice(340_000));
        SubmissionChanges changes = SubmissionChanges.of(into, later, EXAMPLE.evaluated(later), Optional.empty());
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
                SubmissionCheck.of(into, Optional.empty()));
    }

    @Test
    void aFileTakenOutWithItsLineIsMissed() throws Exception {
        Path into = frozen();
        Files.delete(into.resolve("board-memo.html"));
        edit(into.resolve("manifest.sha256"), l -> without(l, "board-memo.html"));
        assertEquals(List.of("board-memo.html was frozen, but manifest.sha256 has no line for it, and it is missing."),
                SubmissionCheck.of(into, Optional.empty()));
        edit(into.resolve("about.txt"), l -> without(l, "File: board-memo.html"));
        assertEquals(List.of("about.txt is not as it was frozen: its SHA-256 is another."), SubmissionCheck.of(into, Optional.empty()));
    }

    @Test
    void aFileThatWasAddedIsNamedWithAndWithoutItsLine() throws Exception {
        Path into = frozen();
        Files.writeString(into.resolve("letter.txt"), "more");
        assertEquals(List.of("letter.txt was not frozen: it has been added to the folder."), SubmissionCheck.of(into, Optional.empty()));
        edit(into.resolve("manifest.sha256"), l -> {
            l.add(SubmissionManifest.sum("more".getBytes(StandardCharsets.UTF_8)) + "  letter.txt");
            return l;
        });
        assertEquals(List.of("letter.txt stands in manifest.sha256, but was not frozen: about.txt does not name it."),
                SubmissionCheck.of(into, Optional.empty()));
    }

    @Test
    void aByteThatWasChangedIsFoundInEveryFile() throws Exception {
        for (String name : List.of("about.txt", "study.amberyard", "inputs.csv", "figures.json", "board-memo.html")) {
            Path file = copy("of " + name).resolve(name);
            assertTrue(file.toFile().setWritable(true));
            byte[] bytes = Files.readAllBytes(file);
            bytes[bytes.length - 2] ^= 1;
            Files.write(file, bytes);
            assertEquals(List.of(name + " is not as it was frozen: its SHA-256 is another."), SubmissionCheck.of(file.getParent(),
                    Optional.empty()));
        }
    }

    @Test
    void linesOfTheManifestInAnotherOrderAreNoticed() throws Exception {
        Path into = frozen();
        String sum = SubmissionManifest.read(into).sum();
        assertEquals(List.of(), SubmissionCheck.of(into, Optional.of(sum.toUpperCase(Locale.ROOT))));
        edit(into.resolve("manifest.sha256"), l -> {
            Collections.reverse(l);
            return l;
        });
        String other = SubmissionManifest.read(into).sum();
        String order = "manifest.sha256 is not as it was frozen: its lines stand in another order.";
        assertEquals(List.of(order), SubmissionCheck.of(into, Optional.empty()));
        assertEquals(List.of("manifest.sha256 is not the one that was frozen: its SHA-256 is " + other + ", expected was " + sum + ".", order),
                SubmissionCheck.of(into, Optional.of(sum)));
    }

    @Test
    void whatNoManifestHasIsTold() throws Exception {
        Path into = frozen();
        edit(into.resolve("manifest.sha256"), l -> {
            l.add(l.get(0));
            l.add("0  ../other.txt");
            l.add("words");
            return l;
        });
        assertEquals(List.of("manifest.sha256 lists about.txt twice.", "manifest.sha256 has a line that names no file: ../other.txt",
                "manifest.sha256 has a line that names no file: words"), SubmissionCheck.of(into, Optional.empty()));
    }

    @Test
    void aFolderInUseIsRefusedAndAStopLeavesNothing() throws Exception {
        Files.writeString(folder.resolve("mine.txt"), "mine");
        FileAlreadyExistsException used = assertThrows(FileAlreadyExistsException.class, () -> Submission.freeze(in, EXAMPLE.study(),
                WANTED, LocalDate.EPOCH, folder, Progress.NONE));
        assertTrue(used.getMessage().contains("a folder of its own"), used.getMessage());
        Path stopped = folder.resolve("stopped");
        assertThrows(CancellationException.class, () -> Submission.freeze(in, EXAMPLE.study(), WANTED, LocalDate.EPOCH, stopped, share -> {
            throw new CancellationException();
        }));
        assertFalse(Files.exists(stopped));
        assertThrows(NoSuchFileException.class, () -> SubmissionChanges.of(folder, EXAMPLE.study(), in.result(), Optional.empty()));
    }
}
