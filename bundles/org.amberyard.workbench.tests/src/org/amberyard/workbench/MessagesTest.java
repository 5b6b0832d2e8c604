package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Field;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.osgi.util.NLS;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every text that the code asks for exists, every one that exists is asked for, and every one takes its values, in both languages. */
class MessagesTest {
    private static final Pattern PLACE = Pattern.compile("\\{\\d\\}");
    /** Texts that are the same in Spanish. */
    private static final Set<String> ALIKE = Set.of("Amberyard", "{0}", "{0} %", "{0} {1}", "{0}: {1}", "{0} \u2013 {1}", "{0} min", "{0} s",
            "{0}, {1}: {2}", "{0} \u2013 Amberyard", "{0}: {1} \u2192 {2}", "Plan", "&Plan", "&English", "E&spa\u00f1ol", "Error",
            "Amberyard {0}", "{0}: {1}.", "{0} ({1})", "{0}: {1} {2} \u2192 {3}");

    @ParameterizedTest
    @ValueSource(strings = {"", ".begin", ".charts", ".columns", ".compare", ".documents", ".editor", ".fields", ".find", ".grid", ".handlers", ".help",
        ".measurements",
        ".plan", ".roll", ".session", ".settings", ".sheets", ".shop", ".views", ".welcome", ".work"})
    void textsAndKeysAgree(String subPackage) throws Exception {
        Class<?> messages = Class.forName("org.amberyard.workbench" + subPackage + ".Messages");
        Properties texts = texts(messages, "messages.properties");

        Set<String> keys = Stream.of(messages.getDeclaredFields()).map(Field::getName)
                .collect(Collectors.toCollection(TreeSet::new));

        assertEquals(keys, new TreeSet<>(texts.stringPropertyNames()));
        for (String key : keys) {
            String bound = NLS.bind(texts.getProperty(key), new Object[] {"a", "b", "c", "d", "e"});
            assertFalse(bound.isBlank() || bound.contains("missing argument"), key);
        }
        sayTheSame(texts, texts(messages, "messages_es.properties"));
    }

    @Test
    void menusAndViewsHaveSpanishTexts() throws Exception {
        sayTheSame(texts(MessagesTest.class, "/plugin.properties"), texts(MessagesTest.class, "/plugin_es.properties"));
    }

    private static void sayTheSame(Properties english, Properties spanish) {
        assertEquals(new TreeSet<>(english.stringPropertyNames()), new TreeSet<>(spanish.stringPropertyNames()));
        for (String key : english.stringPropertyNames()) {
            String text = spanish.getProperty(key);
            assertFalse(text.isBlank(), key);
            assertTrue(!text.equals(english.getProperty(key)) || ALIKE.contains(text.strip()) || text.startsWith("Amberyard"), key);
            assertEquals(places(english.getProperty(key)), places(text), key);
            assertEquals(hasMnemonic(english.getProperty(key)), hasMnemonic(text), key);
        }
    }

    private static boolean hasMnemonic(String text) {
        return text.replace("&&", "").replace(" & ", "").contains("&");
    }

    private static Set<String> places(String text) {
        return PLACE.matcher(text).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Properties texts(Class<?> messages, String name) throws IOException {
        try (InputStream in = messages.getResourceAsStream(name)) {
            assertNotNull(in, messages.getName());
            Properties texts = new Properties();
            texts.load(in);
            return texts;
        }
    }
}
