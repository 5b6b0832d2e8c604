package org.amberyard.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables into a copy of the example, from the command line. */
class ImportTableVerbTest {
    @TempDir
    private Path folder;
    private ExampleConsole console;

    @BeforeEach
    void copyExample() throws IOException {
        console = new ExampleConsole(folder);
    }

    @Test
    void aTableIsShownBeforeItIsWritten() throws Exception {
        Files.writeString(folder.resolve("readings.csv"), "Bus,Date,Odometer\nB01,2026-06-30,200000\n");
        double before = console.study().getBuses().get(0).getOdometerKm();
        assertEquals(ExitCode.DONE, console.run("import-table", ExampleConsole.STUDY, "readings.csv"));
        assertTrue(console.out().startsWith("readings.csv as: Odometer readings, headers in row 1\n  Bus = Bus\n  Date = Date\n  Odometer = Odometer\n"),
                console.out());
        assertTrue(console.out().contains("row 2: bus B01, Odometer: "), console.out());
        assertTrue(console.out().endsWith("0 new, 1 changed values\n"), console.out());
        assertEquals(before, console.study().getBuses().get(0).getOdometerKm());
        assertEquals(ExitCode.DONE, console.run("import-table", ExampleConsole.STUDY, "readings.csv", "--write"));
        assertEquals(200_000 * 1.609344, console.study().getBuses().get(0).getOdometerKm(), 1e-6);
    }

    @Test
    void problemsAreListedAndNothingIsWritten() throws Exception {
        Files.writeString(folder.resolve("readings.csv"), "Bus,Date,Odometer\nB01,2026-06-30,200000\nB77,2026-06-30,1\nB02,soon,1\n");
        byte[] before = Files.readAllBytes(folder.resolve(ExampleConsole.STUDY));
        assertEquals(ExitCode.WRONG_USE, console.run("import-table", ExampleConsole.STUDY, "readings.csv", "--write"));
        assertTrue(console.err().contains("readings.csv, row 3, column “Bus”: “B77” is no bus of the study"), console.err());
        assertTrue(console.err().contains("readings.csv, row 4, column “Date”: “soon” must be a date"), console.err());
        assertTrue(console.err().endsWith("Nothing is imported: 2 problems.\n"), console.err());
        assertEquals(new String(before, StandardCharsets.UTF_8), Files.readString(folder.resolve(ExampleConsole.STUDY)));
    }

    @Test
    void columnsAreKeptInAFileAndTakenFromIt() throws Exception {
        Files.writeString(folder.resolve("a.csv"), "Bus,Date,Odometer\nB01,2026-06-30,200000\n");
        Files.writeString(folder.resolve("b.csv"), "Odometer,Bus,Date\n200100,B01,2026-07-30\n");
        assertEquals(ExitCode.DONE, console.run("import-table", ExampleConsole.STUDY, "a.csv", "--as", "odometers", "--columns", "columns.txt"));
        assertTrue(Files.readString(folder.resolve("columns.txt")).startsWith("odometers\n"));
        assertEquals(ExitCode.DONE, console.run("import-table", ExampleConsole.STUDY, "b.csv", "--columns", "columns.txt", "--write"));
        assertEquals(200_100 * 1.609344, console.study().getBuses().get(0).getOdometerKm(), 1e-6);
    }

    @Test
    void whatIsAskedWronglyIsSaid() throws Exception {
        Files.writeString(folder.resolve("a.csv"), "Bus,Date,Odometer\nB01,2026-06-30,200000\n");
        assertEquals(ExitCode.WRONG_USE, console.run("import-table", ExampleConsole.STUDY, "a.csv", "--as", "poems"));
        assertTrue(console.err().startsWith("--as is “poems”; it must be one of buses, routes, trips, "), console.err());
        assertEquals(ExitCode.WRONG_USE, console.run("import-table", ExampleConsole.STUDY, "a.csv", "--sheet", "Fleet"));
        assertTrue(console.err().startsWith("--sheet is “Fleet”; the file has "), console.err());
        assertEquals(ExitCode.WRONG_USE, console.run("import-table", ExampleConsole.STUDY, "a.csv", "--together"));
        assertTrue(console.err().startsWith("--together needs route sheets whose names say AM, midday or PM; the file has "), console.err());
        assertEquals(ExitCode.WRONG_USE, console.run("import-table", ExampleConsole.STUDY, "a.csv", "--together", "--as", "routes"));
        assertTrue(console.err().contains("leave --as out"), console.err());
        assertEquals(ExitCode.WRONG_USE, console.run("import-table", ExampleConsole.STUDY, "none.csv"));
        assertTrue(console.err().contains("none.csv, where there is no file"), console.err());
    }

    @Test
    void aTemplateIsWrittenForEachKind() {
        assertEquals(ExitCode.DONE, console.run("table-template", ExampleConsole.STUDY, "buses", "--out", "buses.xlsx"));
        assertTrue(Files.exists(folder.resolve("buses.xlsx")));
        assertFalse(console.out().isEmpty());
        assertEquals(ExitCode.WRONG_USE, console.run("table-template", ExampleConsole.STUDY, "poems", "--out", "poems.xlsx"));
    }
}
