package org.amberyard.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.study.Study;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example as a folder of tables and back, from the command line. */
class ExportVerbTest {
    @TempDir
    private Path folder;
    private ExampleConsole console;

    @BeforeEach
    void copyExample() throws IOException {
        console = new ExampleConsole(folder);
    }

    @Test
    void importMakesTheSameStudyOfWhatIsExported() throws Exception {
        assertEquals(ExitCode.DONE, console.run("export", ExampleConsole.STUDY, "tables"), console.err());
        assertEquals(ExitCode.DONE, console.run("import", "tables", "again.amberyard"), console.err());
        assertEquals(ExitCode.DONE, console.run("export", "again.amberyard", "again"), console.err());
        List<Path> tables = in("tables");
        assertTrue(tables.size() > 30, tables.toString());
        assertEquals(tables.stream().map(Path::getFileName).toList(), in("again").stream().map(Path::getFileName).toList());
        for (Path table : tables) {
            assertEquals(-1, Files.mismatch(table, folder.resolve("again").resolve(table.getFileName())), table.toString());
        }
    }

    private List<Path> in(String name) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve(name))) {
            return files.sorted().toList();
        }
    }

    @Test
    void whatIsAskedWronglyIsSaid() throws Exception {
        Files.createDirectories(folder.resolve("full"));
        Files.writeString(folder.resolve("full").resolve("buses.csv"), "Name\n");
        assertEquals(ExitCode.WRONG_USE, console.run("export", ExampleConsole.STUDY, "full"));
        assertTrue(console.err().contains("in which something stands already (buses.csv); give a new or an empty one"), console.err());
        assertEquals(ExitCode.WRONG_USE, console.run("export", ExampleConsole.STUDY, ExampleConsole.STUDY));
        assertTrue(console.err().contains("which is a file"), console.err());
        String typed = ExampleConsole.STUDY.replace("a", "").substring(1);
        assertEquals(ExitCode.WRONG_USE, console.run("export", typed, "tables"));
        assertTrue(console.err().contains("where there is no file"), console.err());
        String near = "x" + ExampleConsole.STUDY;
        assertEquals(ExitCode.WRONG_USE, console.run("export", near, "tables"));
        assertTrue(console.err().contains("Is “" + ExampleConsole.STUDY + "” meant?"), console.err());
        assertEquals(ExitCode.WRONG_USE, console.run("import-table", ExampleConsole.STUDY, "tabels/fleet.csv"));
        assertTrue(console.err().contains("The folder " + folder.resolve("tabels") + " is missing too."), console.err());
    }

    /** Rows of two owners of one name could not be told apart. */
    @Test
    void aStudyThatCannotBeReadBackIsNamed() throws Exception {
        Study study = console.study();
        study.getRoutes().get(1).setName(study.getRoutes().get(0).getName());
        StudyFile.save(study, folder.resolve("twins.amberyard"));
        assertEquals(ExitCode.WRONG_USE, console.run("export", "twins.amberyard", "tables"));
        assertTrue(console.err().contains("but cannot be imported from there as it is; give elements of a kind different names"), console.err());
    }
}
