package org.amberyard.batch;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;

/** A folder with a copy of the example, and the command line in it, which keeps what is worked out. */
final class ExampleConsole {
    /** Name of the copy. */
    static final String STUDY = "district.amberyard";
    private static final Path EXAMPLE = Path.of(System.getProperty("basedir", "."))
            .resolve("../../examples/ostrick-vale/ostrick-vale.amberyard").normalize();

    private final Path folder;
    private final CommandLine line = new CommandLine();
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    ExampleConsole(Path folder) throws IOException {
        this.folder = folder;
        Files.copy(EXAMPLE, folder.resolve(STUDY));
    }

    /** Runs a command; gives its exit code. */
    int run(String... words) {
        out.reset();
        err.reset();
        return line.run(List.of(words), folder, new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    /** What the last command printed. */
    String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    /** What it complained of. */
    String err() {
        return err.toString(StandardCharsets.UTF_8);
    }

    /** The copy as it is now. */
    Study study() throws StudyFileException {
        return StudyFile.load(folder.resolve(STUDY));
    }
}
