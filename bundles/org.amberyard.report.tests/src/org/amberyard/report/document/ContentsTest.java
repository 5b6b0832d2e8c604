package org.amberyard.report.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionURI;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.junit.jupiter.api.Test;

/** Every line of the contents leads to the heading or table that it names. */
class ContentsTest {
    private static final List<String> WORDS = List.of("First & foremost", "Second", "Table 1. Rows", "Table 2. Years: 1 to 2", "Third");
    private static final Document DOCUMENT = document();

    private static DataTable table(String title) {
        return new TableBuilder<Integer>("T", title).text("Name", r -> "row " + r).number("Figure", "t", CellFormat.CENTS, r -> r / 7.0).of(
                IntStream.range(0, 60).boxed().toList());
    }

    /** A section without a heading, and a table in two parts. */
    private static Document document() {
        DataTable whole = table("Table 2. Years");
        return new Document("d", "Title", "", List.of(), "", "", List.of(Section.of("Contents", new Block.Contents()),
                new Section("First & foremost", false, true, List.of(new Block.Paragraph("Plain."))),
                new Section("Second", true, true, List.of(new Block.Paragraph("Before."), table("Table 1. Rows"))),
                new Section("", false, true, List.of(Block.Condensed.of(whole, List.of(table("Table 2. Years: 1 to 2"), table("Table 2. Years: 3"))))),
                new Section("Third", false, true, List.of())));
    }

    private static List<MatchResult> all(String pattern, String in) {
        return Pattern.compile(pattern).matcher(in).results().toList();
    }

    @Test
    void linksOfThePageLeadToWhatTheySay() throws IOException {
        String html = new String(DocumentFormat.HTML.write(DOCUMENT), StandardCharsets.UTF_8);
        List<String> reached = new ArrayList<>();
        for (MatchResult link : all("<a href=\"#([^\"]+)\"[^>]*>([^<]*)</a>", html)) {
            List<MatchResult> places = all(" id=\"" + link.group(1) + "\">([^<]*)<", html);
            assertEquals(1, places.size(), link.group(1));
            assertEquals(link.group(2), places.get(0).group(1));
            reached.add(link.group(2).replace("&amp;", "&"));
        }
        assertEquals(WORDS, reached);
    }

    @Test
    void linksOfTheWordProcessorLeadToWhatTheySay() throws IOException {
        List<String> reached = new ArrayList<>();
        try (XWPFDocument docx = new XWPFDocument(new ByteArrayInputStream(DocumentFormat.DOCX.write(DOCUMENT)))) {
            for (XWPFParagraph line : docx.getParagraphs().stream().filter(p -> p.getCTP().sizeOfHyperlinkArray() > 0).toList()) {
                String anchor = line.getCTP().getHyperlinkArray(0).getAnchor();
                List<XWPFParagraph> places = docx.getParagraphs().stream().filter(p -> p.getCTP().getBookmarkStartList().stream().anyMatch(b -> b
                        .getName().equals(anchor))).toList();
                assertEquals(1, places.size(), anchor);
                assertEquals(line.getText(), places.get(0).getText());
                reached.add(line.getText());
            }
        }
        assertEquals(WORDS, reached);
    }

    @Test
    void linksOfAPdfNameThePageOnWhichItIs() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(DocumentFormat.PDF.write(DOCUMENT))) {
            Set<String> told = new LinkedHashSet<>();
            for (PDAnnotation annotation : pdf.getPage(0).getAnnotations()) {
                PDPageDestination to = (PDPageDestination) ((PDActionGoTo) ((PDAnnotationLink) annotation).getAction()).getDestination();
                told.add(annotation.getContents());
                assertEquals("Page " + (pdf.getPages().indexOf(to.getPage()) + 1), annotation.getContents());
            }
            Set<String> pages = new LinkedHashSet<>();
            for (String words : WORDS) {
                pages.add("Page " + page(pdf, words));
            }
            assertEquals(List.copyOf(pages), List.copyOf(told));
        }
    }

    /** The page behind the contents that has some words. */
    private static int page(PDDocument pdf, String words) throws IOException {
        int page = 2;
        while (!text(pdf, page).contains(words)) {
            page++;
        }
        return page;
    }

    private static String text(PDDocument pdf, int page) throws IOException {
        PDFTextStripper words = new PDFTextStripper();
        words.setStartPage(page);
        words.setEndPage(page);
        return words.getText(pdf);
    }

    @Test
    void aLinkThatLeadsToNoPageOfTheDocumentNamesNone() throws IOException {
        try (PDDocument pdf = new PDDocument()) {
            PDPage page = new PDPage();
            pdf.addPage(page);
            PDPageFitDestination gone = new PDPageFitDestination();
            gone.setPage(new PDPage());
            PDActionGoTo go = new PDActionGoTo();
            go.setDestination(gone);
            PDAnnotationLink lost = new PDAnnotationLink();
            lost.setAction(go);
            PDAnnotationLink outside = new PDAnnotationLink();
            outside.setAction(new PDActionURI());
            page.setAnnotations(List.of(lost, outside));
            PdfLinks.describe(pdf);
            assertEquals(List.of("Another place in this document", "Another place in this document"), page.getAnnotations().stream().map(
                    PDAnnotation::getContents).toList());
        }
    }
}
