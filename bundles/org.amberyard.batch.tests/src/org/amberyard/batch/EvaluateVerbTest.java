package org.amberyard.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.amberyard.report.Cautions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Evaluates the example once, as the program does, and looks at what it says and leaves behind. */
class EvaluateVerbTest {
    @TempDir
    private static Path folder;

    private static int code;
    private static String out;
    private static String err;

    @BeforeAll
    static void evaluate() throws Exception {
        Path bundle = Path.of(System.getProperty("basedir", "."));
        Files.copy(bundle.resolve("../../examples/ostrick-vale/ostrick-vale.amberyard"), folder.resolve("district.amberyard"));
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        ByteArrayOutputStream complaints = new ByteArrayOutputStream();
        code = new CommandLine().run(List.of("evaluate", "district.amberyard", "--out", "results"), folder,
                new PrintStream(printed, true, StandardCharsets.UTF_8), new PrintStream(complaints, true, StandardCharsets.UTF_8));
        out = printed.toString(StandardCharsets.UTF_8);
        err = complaints.toString(StandardCharsets.UTF_8);
    }

    @Test
    void printsTheAnswerAndWritesTheFolderBesideTheCaller() {
        assertEquals(0, code, err);
        assertTrue(out.contains("Present cost (USD)"), out);
        assertTrue(out.contains(" (present value), "), out);
        assertTrue(out.contains(Cautions.text()), out);
        assertTrue(out.contains("Results are in " + folder.resolve("results")), out);
        assertTrue(Files.isRegularFile(folder.resolve("results/results.json")));
        assertTrue(Files.isRegularFile(folder.resolve("results/annual_cost.png")));
        assertTrue(err.lines().allMatch(line -> line.matches(".* %(, about \\d+ s left)?")), err);
        assertTrue(err.endsWith("100 %" + System.lineSeparator()), err);
    }

    @Test
    void figuresOfTheHeadlineStandInLine() {
        List<String> lines = out.lines().skip(2).takeWhile(l -> !l.isBlank()).toList();
        assertTrue(lines.size() > 10, out);
        assertEquals(1, lines.stream().map(String::length).distinct().count(), out);
    }
}
