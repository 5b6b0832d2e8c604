package org.amberyard.fuzz;

import static org.junit.jupiter.api.Assertions.assertFalse;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Files with which an importer once did something else than to read or to refuse them; see {@link Trial}. */
class OnceFailedTest {
    private static final Path FILES = Path.of(System.getProperty("basedir", "."), "data", "once-failed");

    @TestFactory
    List<DynamicTest> areReadOrRefused() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        for (Importer importer : Importer.values()) {
            Path folder = FILES.resolve(importer.name().toLowerCase(Locale.ROOT));
            for (Path file : Files.isDirectory(folder) ? in(folder) : List.<Path>of()) {
                tests.add(DynamicTest.dynamicTest(importer + " " + file.getFileName(), () -> new Trial(importer).of(file)));
            }
        }
        assertFalse(tests.isEmpty(), "no file stands in " + FILES);
        return tests;
    }

    private static List<Path> in(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }
}
