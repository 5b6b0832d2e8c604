package org.amberyard.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.InterruptedIOException;
import java.io.PrintStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.whatif.DrawFailedException;
import org.amberyard.model.depot.ChargingPolicy;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.Shape;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.amberyard.study.whatif.StudySweep;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rows of a sweep of the example, as text and column by column. */
class SweepVerbTest {
    private static final Path EXAMPLE = Path.of(System.getProperty("basedir", "."))
            .resolve("../../examples/ostrick-vale/ostrick-vale.amberyard").normalize().toAbsolutePath();
    private static final int DRAWS = 30;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    private Path folder;

    private int run(String out, String threads) {
        return run(EXAMPLE, out, threads);
    }

    private int run(Path study, String file, String threads) {
        return new CommandLine().run(List.of("sweep", study.toString(), "--out", file, "--draws", String.valueOf(DRAWS), "--threads", threads),
                folder, new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    @Test
    void bothFilesHoldTheSameNumbers() throws Exception {
        assertEquals(0, run("rows.csv", "1"), err.toString(StandardCharsets.UTF_8));
        assertEquals(0, run("rows.columns", "2"), err.toString(StandardCharsets.UTF_8));
        List<String> lines = Files.readAllLines(folder.resolve("rows.csv"));
        assertEquals(DRAWS + 1, lines.size());
        assertTrue(lines.get(0).startsWith("Draw,\"Diesel price\","), lines.get(0));

        ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(folder.resolve("rows.columns"))).order(ByteOrder.LITTLE_ENDIAN);
        byte[] mark = new byte[8];
        bytes.get(mark);
        assertEquals("AMBCOLS2", new String(mark, StandardCharsets.US_ASCII));
        int columns = bytes.getInt();
        for (int column = 0; column < columns; column++) {
            bytes.position(bytes.getInt() + bytes.position());
        }
        assertEquals(DRAWS, bytes.getInt());
        for (int column = 0; column < columns; column++) {
            for (int row = 0; row < DRAWS; row++) {
                assertEquals(Double.parseDouble(lines.get(row + 1).split(",")[column + 1]), bytes.getDouble(), 0);
            }
        }
        assertEquals(0, bytes.getInt());
        assertEquals(DRAWS, bytes.getLong());
        assertEquals(0, bytes.remaining());
    }

    /** Prices below 0, which a check of the study would refuse, come up among the draws only. */
    @Test
    void aSweepThatBreaksOffLeavesWhatStoodThere() throws Exception {
        Study study = StudyFile.load(EXAMPLE);
        study.getWhatIf().getInputs().subList(1, study.getWhatIf().getInputs().size()).clear();
        UncertainInput diesel = study.getWhatIf().getInputs().get(0);
        diesel.setShape(Shape.UNIFORM);
        diesel.setLow(-0.15);
        diesel.setHigh(2);
        StudySweep sweep = new StudySweep(study, new StudyEvaluator().evaluate(StudyCompiler.compile(study)), 2);
        for (String name : List.of("rows.csv", "rows.columns")) {
            Files.writeString(folder.resolve(name), "before");
            assertThrows(DrawFailedException.class, () -> SweepVerb.write(sweep, folder.resolve(name), Progress.NONE));
            assertEquals("before", Files.readString(folder.resolve(name)));
        }
        assertEquals(2, folder.toFile().list().length);
    }

    /** Stopped twice, with rows behind the last mark that are cut off, on other numbers of threads. */
    @Test
    void aStoppedSweepGoesOnToTheSameBytes() throws Exception {
        Study study = StudyFile.load(EXAMPLE);
        study.getWhatIf().setDraws(1500);
        study.getDepot().setChargingPolicy(ChargingPolicy.AT_ONCE);
        StudyResult base = new StudyEvaluator().evaluate(StudyCompiler.compile(study));
        StudySweep one = new StudySweep(study, base, 1);
        StudySweep two = new StudySweep(study, base, 2);
        for (String name : List.of("rows.csv", "rows.columns")) {
            Path whole = folder.resolve("whole-" + name);
            assertEquals(0, SweepVerb.write(two, whole, Progress.NONE));
            Path file = folder.resolve(name);
            for (double share : new double[] {0.3, 0.6}) {
                assertThrows(InterruptedIOException.class, () -> SweepVerb.write(one, file, at -> {
                    if (at > share) {
                        throw new CancellationException();
                    }
                }));
                Files.write(folder.resolve(name + ".part"), new byte[] {1, 2, 3}, StandardOpenOption.APPEND);
            }
            assertFalse(Files.exists(file));
            int before = SweepVerb.write(two, file, Progress.NONE);
            assertTrue(before > 300 && before < 1500, before + " rows were kept");
            assertArrayEquals(Files.readAllBytes(whole), Files.readAllBytes(file));
        }
        assertEquals(4, folder.toFile().list().length);
    }

    @Test
    void rowsOfAnotherStudyAreNotGoneOnWith() throws Exception {
        Files.writeString(folder.resolve("rows.csv.part"), "Draw,other\n0,1\n");
        Files.writeString(folder.resolve("rows.csv.part.at"), "Amberyard sweep 1\nanother\n1\n15\n");
        assertEquals(0, run("rows.csv", "1"), err.toString(StandardCharsets.UTF_8));
        assertEquals(DRAWS + 1, Files.readAllLines(folder.resolve("rows.csv")).size());
        assertFalse(out.toString(StandardCharsets.UTF_8).contains("Went on"));
    }

    @Test
    void thatSurfacesAreNotUsedIsSaidWhereTheStudyAsksForThem() throws Exception {
        Study study = StudyFile.load(EXAMPLE);
        study.getWhatIf().setFitted(true);
        Path fitted = folder.resolve("fitted.amberyard");
        StudyFile.save(study, fitted);
        assertEquals(0, run("rows.csv", "2"));
        assertFalse(out.toString(StandardCharsets.UTF_8).contains("surfaces"));
        assertEquals(0, run(fitted, "fitted.csv", "2"));
        assertTrue(out.toString(StandardCharsets.UTF_8).contains("Every row is evaluated; a sweep does not read draws off fitted surfaces"));
        assertEquals(Files.readString(folder.resolve("rows.csv")), Files.readString(folder.resolve("fitted.csv")));
    }

    @Test
    void anotherKindOfFileIsRefused() {
        assertEquals(2, run("rows.xlsx", "1"));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("its name must end in .csv or .columns."));
    }
}
