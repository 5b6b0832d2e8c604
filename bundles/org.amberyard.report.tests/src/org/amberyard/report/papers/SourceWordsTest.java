package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.DocumentFormat;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class SourceWordsTest {
    private static final Pattern IN_SHORT = Pattern.compile("from memory|common practice, no source|assumed, no source|\\(invented\\)");

    @Test
    void whatIsNotedInShortIsToldAsReadersExpectIt() {
        assertEquals("assumed; no published source", SourceWords.of("assumed; common practice, no source"));
        assertEquals("assumed; no published source", SourceWords.of("assumed, no source"));
        assertEquals("15 to 20 % is a common policy; assumed; no published source", SourceWords.of(
                "15 to 20 % is a common policy; common practice, no source"));
        assertEquals("IPCC AR5, recalled; to be verified before submission", SourceWords.of("IPCC AR5, from memory"));
        assertEquals("State contract offer, FY2026 (invented for this example)", SourceWords.of("State contract offer, FY2026 (invented)"));
        assertEquals("invented for this example", SourceWords.of("invented"));
    }

    @Test
    void citationsStayAsTheyAre() {
        String cited = "US EPA, Emission Factors for Greenhouse Gas Inventories; the invented unit";
        assertEquals(cited, SourceWords.of(cited));
        assertEquals("", SourceWords.of(""));
        assertNull(SourceWords.of(null));
    }

    @Test
    void papersForOutsidersSayItSoAndTheRegisterKeepsWhatWasNoted() throws Exception {
        ExamplePapers example = new ExamplePapers();
        PaperInput in = example.in(example.study(), PaperChoices.STANDARD);
        for (Document of : List.of(GrantSet.of(in), BoardMemo.of(in), UtilityLetter.of(in))) {
            try (PDDocument pdf = Loader.loadPDF(DocumentFormat.PDF.write(of))) {
                String words = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
                assertFalse(IN_SHORT.matcher(words).find(), of.name());
            }
        }
        String sources = GrantTable.T12.of(in).toString();
        assertTrue(sources.contains("assumed; no published source") && sources.contains("(invented for this example)")
                && sources.contains("recalled; to be verified before submission"), "all three");
        assertTrue(new Block.OnSheet(RegisterPapers.all(in)).toString().contains("assumed; common practice, no source"));
    }
}
