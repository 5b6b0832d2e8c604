package org.amberyard.fuzz;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ImportProblem;

/**
 * A try of an importer: it reads a file, or refuses it with reasons, in time. A file with which it does anything else is kept in
 * {@code target/failed/IMPORTER}, from where it goes to {@code data/once-failed/IMPORTER} when the fault is mended.
 *
 * @param importer what reads
 */
record Trial(Importer importer) {
    private static final Duration LONG = Duration.ofSeconds(20);
    private static final int LONGEST = 3000;

    /** Reads a file, or a folder of files. */
    void of(Path file) throws IOException {
        try {
            assertTimeoutPreemptively(LONG, () -> {
                try {
                    importer.take(file);
                } catch (ImportException e) {
                    hold(e);
                }
            });
        } catch (AssertionError | RuntimeException e) {
            keep(file);
            throw e;
        }
    }

    private static void hold(ImportException refused) {
        assertFalse(refused.problems().isEmpty());
        for (ImportProblem problem : refused.problems()) {
            assertFalse(problem.message().isBlank());
            assertTrue(problem.row() >= 0 && problem.toString().length() < LONGEST, problem.toString());
        }
    }

    /** Kept under a sum over its content, once. */
    private void keep(Path file) throws IOException {
        Path kept = Path.of(System.getProperty("basedir", "."), "target", "failed", importer.name().toLowerCase(Locale.ROOT));
        boolean several = Files.isDirectory(file);
        for (Path part : parts(file)) {
            Path to = several ? kept.resolve(sum(file)).resolve(part.getFileName()) : kept.resolve(sum(file) + "-" + part.getFileName());
            Files.createDirectories(to.getParent());
            Files.copy(part, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static List<Path> parts(Path file) throws IOException {
        try (Stream<Path> parts = Files.walk(file)) {
            return parts.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private static String sum(Path file) throws IOException {
        int sum = 1;
        for (Path part : parts(file)) {
            sum = 31 * sum + Arrays.hashCode(Files.readAllBytes(part));
        }
        return Integer.toHexString(sum);
    }
}
