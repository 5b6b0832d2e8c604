package org.amberyard.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Words of the source that must not be there. */
class WordsTest {
    /** The same study gives the same bits anywhere and at any time: no clock, no chance without a seed, no machine's habits. */
    private static final Pattern OF_THE_MACHINE = Pattern.compile("System\\.(?:currentTimeMillis|nanoTime|getenv|getProperty|out|err)"
            + "|Math\\.random|new Random\\(|ThreadLocalRandom|SecureRandom|UUID|hashCode\\(\\) ?%"
            + "|(?:LocalDate|LocalDateTime|LocalTime|Instant|Year|YearMonth|ZonedDateTime)\\.now|\\bClock\\.|ZoneId\\.systemDefault"
            + "|Locale\\.getDefault|\\.formatted\\(|String\\.format\\((?!\\s*Locale)|identityHashCode"
            + "|Class\\.forName|setAccessible");

    /** Upper and lower case of whatever language the machine speaks: an i is no I in Turkish. */
    private static final Pattern CASE_OF_THE_MACHINE = Pattern.compile("to(?:Lower|Upper)Case\\(\\)");

    /** Ends of a program in the middle of it, and faults of the machine taken for problems of the study. */
    private static final Pattern THROWN_AWAY = Pattern.compile("System\\.exit|catch \\((?:Throwable|Error|NullPointerException) ");

    /** A problem of which nothing comes needs a reason. */
    private static final Pattern SILENT = Pattern.compile("catch \\([^)]*\\) \\{\\s*\\}");

    // Put together so that this file does not hold the words.
    private static final Pattern UNFINISHED = Pattern.compile(
            "(?://|\\*|#|<!--)[^\n]*\\b(?:" + "TO" + "DO|FIX" + "ME|XX" + "X|HA" + "CK)\\b|@Dis" + "abled");

    private static List<String> lines(SourceFile file, Pattern pattern) {
        String code = file.code();
        return pattern.matcher(code).results()
                .map(found -> file.bundle() + "/" + file.name() + ":" + code.substring(0, found.start()).lines().count()
                        + " " + found.group().strip())
                .toList();
    }

    private static List<String> inProduct(Pattern pattern) {
        return Sources.ofProduct().stream().flatMap(file -> lines(file, pattern).stream()).toList();
    }

    @Test
    void theCoreAsksTheMachineNothing() {
        assertEquals(List.of(), Sources.ofBundle("core").stream().flatMap(file -> lines(file, OF_THE_MACHINE).stream()).toList());
    }

    @Test
    void caseIsThatOfNoMachine() {
        assertEquals(List.of(), inProduct(CASE_OF_THE_MACHINE));
    }

    @Test
    void noProblemIsThrownAway() {
        assertEquals(List.of(), inProduct(THROWN_AWAY));
        assertEquals(List.of(), Sources.ofProduct().stream().filter(file -> SILENT.matcher(file.text()).find())
                .map(file -> file.bundle() + "/" + file.name()).toList());
    }

    @Test
    void nothingIsLeftForLater() {
        List<String> found = new ArrayList<>();
        for (Path path : Sources.files(Sources.project(), ".java", ".ecore", ".properties", ".md", ".py", ".xml", ".sh", ".c")) {
            if (UNFINISHED.matcher(read(path)).find()) {
                found.add(path.toString());
            }
        }
        assertEquals(List.of(), found);
    }

    private static String read(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}
