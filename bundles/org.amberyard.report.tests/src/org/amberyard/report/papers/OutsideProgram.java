package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Programs of others that open our files; where one is missing, the test is skipped and says so. */
public final class OutsideProgram {
    private static final int PATIENCE_S = 240;

    private OutsideProgram() {
    }

    /** Skips the test where a program is missing. */
    public static void require(String program, String option) throws InterruptedException {
        boolean there;
        try {
            Process asked = new ProcessBuilder(program, option).redirectErrorStream(true).start();
            asked.getInputStream().readAllBytes();
            there = asked.waitFor(PATIENCE_S, TimeUnit.SECONDS);
        } catch (IOException e) {
            there = false;
        }
        assumeTrue(there, program + " is not installed, so files are not opened by it");
    }

    /** Converts a file with an office program under a profile of its own. */
    public static void convert(String format, Path file, Path folder) throws IOException, InterruptedException {
        run(List.of("soffice", "-env:UserInstallation=" + folder.resolve("profile").toUri(), "--headless", "--convert-to", format,
                "--outdir",
                folder.toString(), file.toString()));
    }

    /** Text of a PDF as another program reads it. */
    public static String text(Path pdf) throws IOException, InterruptedException {
        return run(List.of("pdftotext", "-layout", pdf.toString(), "-"));
    }

    /** A page as a browser has it in the end, scripts run. */
    public static String dom(Path page, Path folder) throws IOException, InterruptedException {
        return run(List.of("chromium", "--headless", "--no-sandbox", "--disable-gpu", "--log-level=3", "--user-data-dir="
                + folder.resolve("browser"), "--dump-dom", page.toUri().toString()));
    }

    private static String run(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(PATIENCE_S, TimeUnit.SECONDS), said);
        assertEquals(0, process.exitValue(), said);
        return said;
    }
}
