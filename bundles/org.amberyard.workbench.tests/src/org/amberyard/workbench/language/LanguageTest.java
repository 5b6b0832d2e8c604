package org.amberyard.workbench.language;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.text.NumberFormat;
import java.util.Locale;
import java.util.Optional;
import org.amberyard.study.NumberText;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class LanguageTest {
    private static final String LANGUAGE = "user.language.format";
    private static final String COUNTRY = "user.country.format";

    private final Locale before = Locale.getDefault(Locale.Category.FORMAT);
    private final Optional<String> language = Optional.ofNullable(System.getProperty(LANGUAGE));
    private final Optional<String> country = Optional.ofNullable(System.getProperty(COUNTRY));

    @AfterEach
    void restore() {
        Locale.setDefault(Locale.Category.FORMAT, before);
        language.ifPresentOrElse(l -> System.setProperty(LANGUAGE, l), () -> System.clearProperty(LANGUAGE));
        country.ifPresentOrElse(c -> System.setProperty(COUNTRY, c), () -> System.clearProperty(COUNTRY));
    }

    private static String written(String language, String country) {
        System.setProperty(LANGUAGE, language);
        System.setProperty(COUNTRY, country);
        Language.keepNumbersOfSystem();
        return NumberFormat.getNumberInstance().format(1234.5);
    }

    @Test
    void numbersAreWrittenAsTheSystemWritesThem() {
        assertEquals("1,234.5", written("es", "US"));
        assertEquals("1.234,5", written("es", "ES"));
        assertEquals("1\u202f234,5", written("fr", "FR"));
    }

    /** Else tables of results had other digits than entry fields, and a decimal that few keyboards have. */
    @Test
    void digitsAreThoseThatAreRead() {
        assertEquals("1,234.5", written("ar", "EG"));
        assertEquals(Optional.of(4.75), new NumberText(Locale.getDefault(Locale.Category.FORMAT)).parse("4.75"));
        assertEquals("1,234.5", written("ne", "NP"));
    }
}
