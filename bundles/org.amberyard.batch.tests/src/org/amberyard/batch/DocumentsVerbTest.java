package org.amberyard.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.GivenOutFigure;
import org.amberyard.model.study.Narrative;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyFactory;
import org.amberyard.study.StudyEvaluator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DocumentsVerbTest {
    private static final Path BUNDLE = Path.of(System.getProperty("basedir", ".")).toAbsolutePath();
    private static final String STUDY = BUNDLE.resolve("../../examples/ostrick-vale/ostrick-vale.amberyard").normalize().toString();
    private static final StudyEvaluator EVALUATOR = new StudyEvaluator();

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    Path folder;

    private int run(String... options) {
        List<String> words = Stream.concat(Stream.of("documents", STUDY, "--out", "docs"), Stream.of(options)).toList();
        return new CommandLine(EVALUATOR).run(words, folder, new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    @Test
    void documentsAreWrittenAsAskedAndTheSameEachTime() throws IOException {
        String[] words = {"--kind", "board,grant", "--format", "html,xlsx", "--tables", "T8,t4", "--plan", "Rebate buses only",
            "--dated", "2026-08-31"};
        assertEquals(ExitCode.DONE, run(words), err.toString(StandardCharsets.UTF_8));
        List<Path> files;
        try (Stream<Path> list = Files.list(folder.resolve("docs"))) {
            files = list.sorted().toList();
        }
        assertEquals(List.of("board-memo.html", "board-memo.xlsx", "grant-tables.html", "grant-tables.xlsx"),
                files.stream().map(f -> f.getFileName().toString()).toList());
        String page = Files.readString(folder.resolve("docs/grant-tables.html"));
        assertTrue(page.contains("Rebate buses only") && page.contains("2026-08-31"));
        assertTrue(page.indexOf("T8a. What a ton") < page.indexOf("T4a. Budget"), "in the order asked");
        assertFalse(page.contains("T1a."));
        byte[] before = Files.readAllBytes(files.get(3));
        run(words);
        assertArrayEquals(before, Files.readAllBytes(files.get(3)));
    }

    /** A text keeps the programme that it was given out to, whichever one documents apply to now. */
    @Test
    void aTextGivenOutToAnotherProgrammeHasNotChanged() throws StudyFileException {
        Study study = StudyFile.load(Path.of(STUDY));
        Narrative need = study.getNarratives().get(0);
        need.setText("{grant requested}");
        need.setGivenOutFor(study.getPlans().get(1));
        need.setGivenOutTo(study.getProgrammes().stream().filter(p -> p.getName().equals("Make-ready")).findFirst().orElseThrow());
        GivenOutFigure figure = StudyFactory.eINSTANCE.createGivenOutFigure();
        figure.setFigure("grant requested");
        figure.setPrinted("USD\u00a0308,915");
        need.getGivenOut().add(figure);
        assertEquals("", changesTold(study));
        need.setGivenOutTo(null);
        assertEquals("Changed since “Need” was given out: grant requested: USD\u00a0308,915 → USD\u00a0651,401", changesTold(study));
    }

    private String changesTold(Study study) throws StudyFileException {
        Path file = folder.resolve("given-out.amberyard");
        StudyFile.save(study, file);
        assertEquals(ExitCode.DONE, command("documents", file.toString(), "--out", "docs", "--kind", "grant", "--tables", "T9",
                "--format", "csv", "--plan", study.getPlans().get(1).getName()), err.toString(StandardCharsets.UTF_8));
        return err.toString(StandardCharsets.UTF_8).lines().filter(l -> l.startsWith("Changed since")).collect(Collectors.joining("\n"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "--kind|letter|--kind has “letter”; allowed, joined by commas: grant, board, utility, schedule, routes, shop, appendix, cash-flow.",
        "--format|docx,odt|--format has “odt”; allowed, joined by commas: docx, xlsx, pdf, html, csv, json.",
        "--tables|T99|--tables has “T99”; allowed, joined by commas: T1, T2",
        "--plan|None|PLAN is “None”; it must be one of Like for like",
        "--plan|Like for like|--plan is “Like for like”, the baseline that plans are compared with; choose one of “Electric in stages”, “Rebate",
        "--programme|None|--programme is “None”; it must be one of Clean Fleet Fund",
        "--paper|a3|--paper is “a3”; it must be one of letter, legal, tabloid, a4.",
        "--dated|31.8.2026|--dated is “31.8.2026”; it must be a date as 2026-08-31."})
    void wrongChoicesAreNamedWithWhatIsAllowed(String option, String value, String message) {
        assertEquals(ExitCode.WRONG_USE, run(option, value));
        assertTrue(err.toString(StandardCharsets.UTF_8).startsWith(message), err.toString(StandardCharsets.UTF_8));
        assertFalse(Files.exists(folder.resolve("docs")));
    }

    private int command(String... words) {
        out.reset();
        err.reset();
        return new CommandLine(EVALUATOR).run(List.of(words), folder, new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    private String said() {
        return out.toString(StandardCharsets.UTF_8).strip();
    }

    @Test
    void aSubmissionIsFrozenOnceAndComparedLater() {
        String[] freeze = {"freeze", STUDY, "--out", "frozen", "--kind", "board", "--format", "html"};
        assertEquals(ExitCode.DONE, command(freeze), err.toString(StandardCharsets.UTF_8));
        assertTrue(Files.exists(folder.resolve("frozen/manifest.sha256")));
        assertEquals(ExitCode.DONE, command("compare-frozen", STUDY, "--frozen", "frozen"), err.toString(StandardCharsets.UTF_8));
        assertTrue(said().startsWith("The study and all its figures are those of the submission."), said());
        assertEquals(ExitCode.WRONG_USE, command(freeze));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("a submission is frozen into a folder of its own, new or empty"),
                err.toString(StandardCharsets.UTF_8));
        assertEquals(ExitCode.WRONG_USE, command("compare-frozen", STUDY, "--frozen", "."));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("there is no manifest.sha256"), err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void theSumPrintedAtFreezingFindsAManifestThatWasWrittenAnew() throws IOException {
        command("freeze", STUDY, "--out", "frozen", "--kind", "board", "--format", "html", "--dated", "2026-08-31");
        String sum = said().replaceAll("(?s).*manifest.sha256 has SHA-256 ([0-9a-f]{64});.*", "$1");
        String about = Files.readString(folder.resolve("frozen/about.txt"));
        assertTrue(about.contains("\nFrozen on: 2026-08-31\n") && about.contains("\nDocuments: board\nFormats: html\n"), about);
        assertEquals(ExitCode.DONE, command("compare-frozen", STUDY, "--frozen", "frozen", "--sum", sum), said());
        String other = (sum.startsWith("0") ? "1" : "0") + sum.substring(1);
        assertEquals(ExitCode.DIFFERS, command("compare-frozen", STUDY, "--frozen", "frozen", "--sum", other));
        assertTrue(said().startsWith("What is not as it was frozen: 1\n  manifest.sha256 is not the one that was frozen: its SHA-256 is "
                + sum + ", expected was " + other), said());
        assertEquals(ExitCode.WRONG_USE, command("compare-frozen", STUDY, "--frozen", "frozen", "--sum", "abc"));
        assertEquals("--sum is “abc”; it must be a SHA-256 of 64 hexadecimal digits.", err.toString(StandardCharsets.UTF_8).strip());
    }
}
