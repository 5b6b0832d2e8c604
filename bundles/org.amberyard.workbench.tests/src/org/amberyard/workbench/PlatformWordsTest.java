package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.Manifest;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.core.runtime.Platform;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the platform says in Spanish stands for something that it says in English, and takes the same values. */
class PlatformWordsTest {
    private static final Path BUNDLES = Path.of(System.getProperty("basedir", ".")).resolve("..").normalize();
    private static final Pattern PLACE = Pattern.compile("\\{\\d\\}");

    static Stream<Path> texts() throws IOException {
        try (Stream<Path> fragments = Files.list(BUNDLES)) {
            return fragments.filter(f -> f.getFileName().toString().startsWith("org.amberyard.spanish.")).sorted().toList().stream()
                    .flatMap(PlatformWordsTest::textsOf);
        }
    }

    private static Stream<Path> textsOf(Path fragment) {
        try (Stream<Path> all = Files.walk(fragment.resolve("org"))) {
            return all.filter(Files::isRegularFile).sorted().toList().stream();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @MethodSource("texts")
    void thePlatformHasTheSameText(Path file) throws IOException {
        Path fragment = BUNDLES.resolve(BUNDLES.relativize(file).getName(0));
        String place = fragment.relativize(file).toString().replace('\\', '/').replace("messages_es", "messages");
        URL host = Platform.getBundle(host(fragment)).getEntry(place);
        assertNotNull(host, host(fragment) + " has no " + place);
        Properties english = read(host.openStream());
        Properties spanish = read(Files.newInputStream(file));
        assertFalse(spanish.isEmpty());
        for (String key : new TreeSet<>(spanish.stringPropertyNames())) {
            assertNotNull(english.getProperty(key), key);
            assertEquals(places(english.getProperty(key)), places(spanish.getProperty(key)), key);
        }
    }

    private static String host(Path fragment) throws IOException {
        try (InputStream in = Files.newInputStream(fragment.resolve("META-INF/MANIFEST.MF"))) {
            return new Manifest(in).getMainAttributes().getValue("Fragment-Host");
        }
    }

    private static Properties read(InputStream texts) throws IOException {
        try (InputStream in = texts) {
            Properties read = new Properties();
            read.load(in);
            return read;
        }
    }

    private static Set<String> places(String text) {
        return PLACE.matcher(text).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
    }
}
