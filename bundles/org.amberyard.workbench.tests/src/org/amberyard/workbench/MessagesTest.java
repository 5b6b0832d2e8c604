package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Field;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.osgi.util.NLS;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every text that the code asks for exists, every one that exists is asked for, and every one takes its values. */
class MessagesTest {

    @ParameterizedTest
    @ValueSource(strings = {"", ".begin", ".charts", ".columns", ".compare", ".documents", ".editor", ".fields", ".find", ".grid", ".handlers", ".help", ".measurements",
        ".plan", ".session", ".sheets", ".shop", ".views", ".welcome", ".work"})
    void textsAndKeysAgree(String subPackage) throws Exception {
        Class<?> messages = Class.forName("org.amberyard.workbench" + subPackage + ".Messages");
        Properties texts = texts(messages);

        Set<String> keys = Stream.of(messages.getDeclaredFields()).map(Field::getName)
                .collect(Collectors.toCollection(TreeSet::new));

        assertEquals(keys, new TreeSet<>(texts.stringPropertyNames()));
        for (String key : keys) {
            String bound = NLS.bind(texts.getProperty(key), new Object[] {"a", "b", "c", "d", "e"});
            assertFalse(bound.isBlank() || bound.contains("missing argument"), key);
        }
    }

    private static Properties texts(Class<?> messages) throws IOException {
        try (InputStream in = messages.getResourceAsStream("messages.properties")) {
            assertNotNull(in, messages.getName());
            Properties texts = new Properties();
            texts.load(in);
            return texts;
        }
    }
}
