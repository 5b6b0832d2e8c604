package org.amberyard.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What README shows is what the program prints. */
class ReadmeTest {
    private static final Path ROOT = Path.of(System.getProperty("basedir", ".")).resolve("../..").toAbsolutePath().normalize();

    private static String run(String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = new CommandLine().run(Arrays.asList(words), ROOT, new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
        assertEquals(0, code, err.toString(StandardCharsets.UTF_8));
        return out.toString(StandardCharsets.UTF_8);
    }

    private static String readme() throws IOException {
        return Files.readString(ROOT.resolve("README.md"));
    }

    @Test
    void theWorkedBillIsThatOfTheExample() throws IOException {
        String bill = run("bill", "examples/ostrick-vale/ostrick-vale.amberyard", "Electric in stages", "2040", "January").strip();
        assertTrue(readme().contains(bill), "README must show this bill:\n" + bill);
    }

    @Test
    void everyVerbIsListed() throws IOException {
        String readme = readme();
        Matcher verbs = Pattern.compile("^  amberyard (\\S+)", Pattern.MULTILINE).matcher(run("--help"));
        List<String> missing = verbs.results().map(m -> m.group(1)).filter(v -> !readme.contains("sh releng/run " + v + " ")).toList();
        assertEquals(List.of(), missing);
    }
}
