package org.amberyard.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.routes.DriveTrace;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Studies of folders and drives of logs, from the command line. */
class ImportVerbsTest {
    @TempDir
    private Path folder;
    private ExampleConsole console;

    @BeforeEach
    void copyExample() throws IOException {
        console = new ExampleConsole(folder);
    }

    @Test
    void importMakesTheStudyOfItsFolder() throws Exception {
        Path csv = Path.of(System.getProperty("basedir", ".")).resolve("../../examples/ostrick-vale/csv").toAbsolutePath();
        assertEquals(0, console.run("import", csv.toString(), "made.amberyard"), console.err());
        assertTrue(EcoreUtil.equals(StudyFile.load(folder.resolve(ExampleConsole.STUDY)),
                StudyFile.load(folder.resolve("made.amberyard"))));
    }

    @Test
    void importSaysWhatKeptItFromImporting() throws IOException {
        Path csv = Files.createDirectory(folder.resolve("csv"));
        Files.writeString(csv.resolve("site.csv"), "Nome\nYard\n");
        assertEquals(2, console.run("import", "csv", "made.amberyard"));
        assertTrue(console.err().contains("site.csv, row 1, column “Nome”"), console.err());
        assertFalse(Files.exists(folder.resolve("made.amberyard")));
        assertEquals(2, console.run("import", "csv"));
        assertTrue(console.err().contains("“import” takes a folder and a study but got 1 (csv)"), console.err());
        assertEquals(2, console.run("import", "nowhere", "made.amberyard"));
        assertTrue(console.err().contains("where there is no folder"), console.err());
    }

    @Test
    void importTraceAddsADriveAndSaysWhatWasDone() throws Exception {
        Path schedule = Path.of(System.getProperty("basedir", ".")).resolve("../../examples/drive-schedules/epa_hd_udds.csv")
                .toAbsolutePath();
        assertEquals(0, console.run("import-trace", ExampleConsole.STUDY, schedule.toString(), "--run", "R02/PM"), console.err());
        assertTrue(console.out().startsWith("1,061 points were read."), console.out());
        assertTrue(console.out().contains("The drive is 5.55 mi long and takes 17.7 min: mean 18.9 mph"), console.out());
        assertTrue(console.out().contains("Drive trace “epa_hd_udds” is in the study."), console.out());
        assertTrue(console.out().contains("Run PM of route R02: distance is "), console.out());
        assertEquals(0, console.run("import-trace", ExampleConsole.STUDY, schedule.toString()), console.err());
        Study study = StudyFile.load(folder.resolve(ExampleConsole.STUDY));
        List<String> names = study.getTraces().stream().map(DriveTrace::getName).filter(n -> n.startsWith("epa")).toList();
        assertEquals(List.of("epa_hd_udds", "epa_hd_udds 2"), names);
        assertEquals("epa_hd_udds", study.getRoutes().get(1).getRuns().get(1).getTrace().getName());
        assertEquals(0, console.run("check", ExampleConsole.STUDY), console.out());
    }

    @Test
    void importTraceChangesNothingWhenItIsRefused() throws IOException {
        byte[] before = Files.readAllBytes(folder.resolve(ExampleConsole.STUDY));
        Files.writeString(folder.resolve("log.csv"), "time_s,speed_mps\n0,0\n1,fast\n");
        assertEquals(2, console.run("import-trace", ExampleConsole.STUDY, "log.csv"));
        assertTrue(console.err().contains("log.csv, row 3, column “speed_mps”: “fast” must be a number, 0 to 100 m/s."), console.err());
        assertEquals(2, console.run("import-trace", ExampleConsole.STUDY, "nowhere.gpx"));
        assertTrue(console.err().contains("FILE is " + folder.resolve("nowhere.gpx") + ", where there is no file"), console.err());
        assertEquals(2, console.run("import-trace", ExampleConsole.STUDY, "log.csv", "--run", "R02/XM"));
        assertTrue(console.err().contains("--run is R02/XM, which is no run of the study; give ROUTE/RUN, such as R01/AM."), console.err());
        assertEquals(2, console.run("import-trace", ExampleConsole.STUDY));
        assertTrue(console.err().contains("“import-trace” takes a study and a file but got 1 (" + ExampleConsole.STUDY + ")"), console.err());
        assertArrayEquals(before, Files.readAllBytes(folder.resolve(ExampleConsole.STUDY)));
    }
}
