package org.amberyard.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The list of libraries that goes into the product is that of the target definition. */
class LibrariesTest {
    private static final Path LEGAL = Sources.project().resolve("features/org.amberyard.feature/rootfiles/legal");
    private static final Path TARGET = Sources.project().resolve("releng/target/org.amberyard.target.target");
    private static final Pattern DEPENDENCY = Pattern.compile("(?s)<dependency>.*?</dependency>");

    private static List<String[]> listed() throws IOException {
        return Files.readAllLines(LEGAL.resolve("LIBRARIES.csv")).stream().skip(1).map(line -> line.split(",")).toList();
    }

    private static String part(String dependency, String tag) {
        Matcher found = Pattern.compile("<" + tag + ">([^<]*)</" + tag + ">").matcher(dependency);
        assertTrue(found.find(), () -> tag + " is missing in " + dependency);
        return found.group(1);
    }

    @Test
    void everyLibraryIsListedWithItsVersion() throws IOException {
        Map<String, String> wanted = new TreeMap<>();
        DEPENDENCY.matcher(Files.readString(TARGET)).results().map(found -> found.group())
                .forEach(found -> wanted.put(part(found, "groupId") + ":" + part(found, "artifactId"), part(found, "version")));
        Map<String, String> listed = new TreeMap<>();
        listed().forEach(row -> listed.put(row[1], row[2]));
        assertEquals(wanted, listed);
    }

    @Test
    void everyLibraryHasALicenceAndAPurpose() throws IOException {
        for (String[] row : listed()) {
            assertEquals(5, row.length, String.join(",", row));
            assertTrue(List.of("EPL-2.0", "Apache-2.0", "MIT", "LGPL-2.1-or-later", "Unicode-3.0", "W3C").contains(row[3]), row[0]);
            assertTrue(row[4].length() >= 3, row[0]);
        }
    }

    @Test
    void librariesWithNoticesAreNamedInThem() throws IOException {
        String notice = Files.readString(LEGAL.resolve("NOTICE"));
        for (String[] row : listed()) {
            if (row[1].startsWith("org.apache.") && !row[4].endsWith(" alone")) {
                assertTrue(notice.contains(row[0]), row[0]);
            }
        }
    }
}
