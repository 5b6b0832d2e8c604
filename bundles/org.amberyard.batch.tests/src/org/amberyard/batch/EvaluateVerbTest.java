package org.amberyard.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.GivenOutFigure;
import org.amberyard.model.study.Narrative;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyFactory;
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
        Study study = StudyFile.load(bundle.resolve("../../examples/ostrick-vale/ostrick-vale.amberyard"));
        giveOut(study.getNarratives().get(0), study.getPlans().get(1));
        StudyFile.save(study, folder.resolve("district.amberyard"));
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        ByteArrayOutputStream complaints = new ByteArrayOutputStream();
        code = new CommandLine().run(List.of("evaluate", "district.amberyard", "--out", "results"), folder,
                new PrintStream(printed, true, StandardCharsets.UTF_8), new PrintStream(complaints, true, StandardCharsets.UTF_8));
        out = printed.toString(StandardCharsets.UTF_8);
        err = complaints.toString(StandardCharsets.UTF_8);
    }

    /** As if the need had been told of a smaller fleet. */
    private static void giveOut(Narrative need, Plan plan) {
        need.setGivenOutFor(plan);
        need.setGivenOutOn("2026-05-01");
        GivenOutFigure figure = StudyFactory.eINSTANCE.createGivenOutFigure();
        figure.setFigure("buses in the fleet");
        figure.setPrinted("23");
        need.getGivenOut().add(figure);
    }

    @Test
    void aTextGivenOutWithOtherFiguresIsAmongTheFindings() {
        assertTrue(out.contains("Narrative Need: figures in it are others than when it was given out on 2026-05-01 for “Electric in stages”. "
                + "“buses in the fleet” was 23. It is 24 now. Whoever has the old text needs the new one."), out);
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
