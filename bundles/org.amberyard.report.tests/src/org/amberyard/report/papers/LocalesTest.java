package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.amberyard.core.progress.Progress;
import org.amberyard.report.document.DocumentFormat;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Documents are the same to the byte wherever they are made, from the evaluation on; all but the appendix, which takes long. */
class LocalesTest {
    private static final Locale OWN = Locale.getDefault();
    /** What is printed; the memo, which is short, is written in all formats. */
    private static final Set<DocumentFormat> PAGE = EnumSet.of(DocumentFormat.HTML);
    private static Map<String, byte[]> english;

    @BeforeAll
    static void writeInEnglish() throws IOException {
        english = documents("en-US");
    }

    @AfterEach
    void restore() {
        Locale.setDefault(OWN);
    }

    private static Map<String, byte[]> documents(String locale) throws IOException {
        Locale.setDefault(Locale.forLanguageTag(locale));
        ExamplePapers example = new ExamplePapers();
        PaperInput in = example.in(example.study(), PaperChoices.STANDARD);
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (DocumentKind kind : EnumSet.complementOf(EnumSet.of(DocumentKind.APPENDIX))) {
            files.putAll(kind.files(in, kind == DocumentKind.BOARD ? EnumSet.allOf(DocumentFormat.class) : PAGE, Progress.NONE));
        }
        return files;
    }

    /** Digits of their own, commas as decimal signs, thin spaces between thousands, other letters in capitals. */
    @ParameterizedTest
    @ValueSource(strings = {"ar-EG", "fr-FR", "es-ES", "tr-TR"})
    void documentsAreTheSameInEveryLocale(String locale) throws IOException {
        Map<String, byte[]> there = documents(locale);
        assertEquals(english.keySet(), there.keySet());
        english.forEach((name, bytes) -> assertArrayEquals(bytes, there.get(name), name));
    }
}
