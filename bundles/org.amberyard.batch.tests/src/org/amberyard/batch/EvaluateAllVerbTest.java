package org.amberyard.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.amberyard.model.common.BodyType;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.UnitChoice;
import org.amberyard.study.begin.Answers;
import org.amberyard.study.begin.BeginStudy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder with three studies, one of which nobody can read; then it is put right, and another changes. */
class EvaluateAllVerbTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    private Path folder;

    private static Study study(String name) {
        return BeginStudy
                .of(new Answers(name, UnitChoice.METRIC, 2026, new Answers.Fleet(List.of(new Answers.Bodies(BodyType.C, 2, 0, 150_000, 350_000)), 2014, 2016),
                        new Answers.RouteDay(60, 2, 180), new Answers.Weather(-3, 24, -18), new Answers.Prices(1, 0.13, 11), 2030));
    }

    private int run() {
        out.reset();
        err.reset();
        return new CommandLine().run(List.of("evaluate-all", "studies", "--out", "results"), folder,
                new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    private String said() {
        return err.toString(StandardCharsets.UTF_8) + out.toString(StandardCharsets.UTF_8);
    }

    private List<String> table() throws Exception {
        return Files.readAllLines(folder.resolve("results/studies.csv"));
    }

    @Test
    void whatIsDoneStaysAndFailuresAreListed() throws Exception {
        Path studies = Files.createDirectories(folder.resolve("studies"));
        Path north = Files.createDirectories(studies.resolve("north"));
        StudyFile.save(study("Ashcombe"), studies.resolve("a.amberyard"));
        StudyFile.save(study("Birchley"), north.resolve("b.amberyard"));
        Files.writeString(studies.resolve("c.amberyard"), "no study");

        assertEquals(2, run(), said());
        assertTrue(said().contains("a.amberyard, evaluated") && said().contains("north/b.amberyard, evaluated"), said());
        assertTrue(said().contains("2 of 3 studies are in "), said());
        assertTrue(Files.readString(folder.resolve("results/failures.csv")).contains("c.amberyard,"), said());
        List<String> first = table();
        assertTrue(first.get(0).startsWith("Study,Name,Money,Plan,"), first.get(0));
        assertEquals(List.of("a.amberyard,Ashcombe", "a.amberyard,Ashcombe", "north/b.amberyard,Birchley", "north/b.amberyard,Birchley"),
                first.stream().skip(1).map(row -> row.substring(0, row.indexOf(',', row.indexOf(',') + 1))).toList());

        StudyFile.save(study("Cold Harbour"), studies.resolve("c.amberyard"));
        Study dearer = study("Birchley");
        dearer.getSettings().setDiscountRate(0.07);
        StudyFile.save(dearer, north.resolve("b.amberyard"));
        assertEquals(0, run(), said());
        assertTrue(said().contains("a.amberyard, kept from before") && said().contains("c.amberyard, evaluated")
                && said().contains("north/b.amberyard, evaluated"), said());
        assertEquals(first.subList(1, 3), table().subList(1, 3));
        assertTrue(!table().contains(first.get(3)), "another discount rate, another present cost");
        assertEquals(1, Files.readAllLines(folder.resolve("results/failures.csv")).size());
        assertEquals(1, folder.resolve("results/by-study/north").toFile().list().length, "rows of the version before are gone");
    }

    @Test
    void aFolderWithoutStudiesIsSaid() throws Exception {
        assertEquals(2, run());
        assertTrue(said().contains("where there is no folder"), said());
        Files.createDirectories(folder.resolve("studies"));
        assertEquals(2, run());
        assertTrue(said().contains("which holds no study file (*.amberyard)"), said());
    }
}
