package org.amberyard.report.document;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The line at the foot of pages goes on in a second one where it must, never within one of its parts. */
class FootLineTest {
    private static final String LONG = "Tables for a grant application · A study with a name of some length · The regional school district of a long valley"
            + " · study 0123456789ab · Amberyard 1.0.0";

    private static String page(String running) throws IOException {
        Document document = new Document("d", "D", "", List.of(), running, "", List.of(Section.of("S", new Block.Paragraph("Text."))));
        return new String(DocumentFormat.HTML.write(document), StandardCharsets.UTF_8);
    }

    @Test
    void aLongLinePartsBetweenItsParts() throws IOException {
        assertTrue(page(LONG + " · 2026-11-28").contains("long valley\\A study 0123456789ab · Amberyard 1.0.0 · 2026-11-28\""));
    }

    @Test
    void aShortLineStaysOne() throws IOException {
        String page = page("Memo · A study · 2026-11-28");
        assertTrue(page.contains("\"Memo · A study · 2026-11-28\""));
        assertFalse(page.contains("\\A "));
    }
}
