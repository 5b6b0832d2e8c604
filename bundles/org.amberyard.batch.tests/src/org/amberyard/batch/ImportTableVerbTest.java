package org.amberyard.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.study.Study;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables into a copy of the example, from the command line. */
class ImportTableVerbTest {
    private static final String STUDY = "district.amberyard";
    private static final Path EXAMPLE = Path.of(System.getProperty("basedir", "."))
            .resolve("../../examples/ostrick-vale/ostrick-vale.amberyard").normalize();

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    private Path folder;

    @BeforeEach
    void copyExample() throws Exception {
        Files.copy(EXAMPLE, folder.resolve(STUDY));
    }

    private int run(String... words) {
        out.reset();
        err.reset();
        return new CommandLine().run(List.of(words), folder, new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    private String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }

    private Study study() throws Exception {
        return StudyFile.load(folder.resolve(STUDY));
    }

    @Test
    void aTableIsShownBeforeItIsWritten() throws Exception {
        Files.writeString(folder.resolve("readings.csv"), "Bus,Date,Odometer\nB01,2026-06-30,200000\n");
        double before = study().getBuses().get(0).getOdometerKm();
        assertEquals(ExitCode.DONE, run("import-table", STUDY, "readings.csv"));
        assertTrue(out().startsWith("readings.csv as: Odometer readings, headers in row 1\n  Bus = Bus\n  Date = Date\n  Odometer = Odometer\n"), out());
        assertTrue(out().contains("row 2: bus B01, Odometer: "), out());
        assertTrue(out().endsWith("0 new, 1 changed values\n"), out());
        assertEquals(before, study().getBuses().get(0).getOdometerKm());
        assertEquals(ExitCode.DONE, run("import-table", STUDY, "readings.csv", "--write"));
        assertEquals(200_000 * 1.609344, study().getBuses().get(0).getOdometerKm(), 1e-6);
    }

    @Test
    void problemsAreListedAndNothingIsWritten() throws Exception {
        Files.writeString(folder.resolve("readings.csv"), "Bus,Date,Odometer\nB01,2026-06-30,200000\nB77,2026-06-30,1\nB02,soon,1\n");
        byte[] before = Files.readAllBytes(folder.resolve(STUDY));
        assertEquals(ExitCode.WRONG_USE, run("import-table", STUDY, "readings.csv", "--write"));
        assertTrue(err().contains("readings.csv, row 3, column “Bus”: “B77” is no bus of the study"), err());
        assertTrue(err().contains("readings.csv, row 4, column “Date”: “soon” must be a date"), err());
        assertTrue(err().endsWith("Nothing is imported: 2 problems.\n"), err());
        assertEquals(new String(before, StandardCharsets.UTF_8), Files.readString(folder.resolve(STUDY)));
    }

    @Test
    void columnsAreKeptInAFileAndTakenFromIt() throws Exception {
        Files.writeString(folder.resolve("a.csv"), "Bus,Date,Odometer\nB01,2026-06-30,200000\n");
        Files.writeString(folder.resolve("b.csv"), "Odometer,Bus,Date\n200100,B01,2026-07-30\n");
        assertEquals(ExitCode.DONE, run("import-table", STUDY, "a.csv", "--as", "odometers", "--columns", "columns.txt"));
        assertTrue(Files.readString(folder.resolve("columns.txt")).startsWith("odometers\n"));
        assertEquals(ExitCode.DONE, run("import-table", STUDY, "b.csv", "--columns", "columns.txt", "--write"));
        assertEquals(200_100 * 1.609344, study().getBuses().get(0).getOdometerKm(), 1e-6);
    }

    @Test
    void whatIsAskedWronglyIsSaid() throws Exception {
        Files.writeString(folder.resolve("a.csv"), "Bus,Date,Odometer\nB01,2026-06-30,200000\n");
        assertEquals(ExitCode.WRONG_USE, run("import-table", STUDY, "a.csv", "--as", "poems"));
        assertTrue(err().startsWith("--as is “poems”; it must be one of buses, routes, trips, "), err());
        assertEquals(ExitCode.WRONG_USE, run("import-table", STUDY, "a.csv", "--sheet", "Fleet"));
        assertTrue(err().startsWith("--sheet is “Fleet”; the file has "), err());
        assertEquals(ExitCode.WRONG_USE, run("import-table", STUDY, "none.csv"));
        assertTrue(err().contains("none.csv, where there is no file"), err());
    }

    @Test
    void aTemplateIsWrittenForEachKind() {
        assertEquals(ExitCode.DONE, run("table-template", STUDY, "buses", "--out", "buses.xlsx"));
        assertTrue(Files.exists(folder.resolve("buses.xlsx")));
        assertFalse(out().isEmpty());
        assertEquals(ExitCode.WRONG_USE, run("table-template", STUDY, "poems", "--out", "poems.xlsx"));
    }
}
