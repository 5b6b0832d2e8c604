package org.amberyard.report.document;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.amberyard.report.papers.OutsideProgram;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.DocumentDocument;

class DocumentWritersTest {
    private static final Document DOCUMENT = SampleDocument.of();
    private static final DataTable TABLE = DOCUMENT.tables().get(0);
    private static final int HEAD_ROW = 3;

    private static final String PROBE = """
            <pre id="probe"></pre><script>
            var style = document.querySelector('style').textContent.match(/"Running[^\\n]*?";/)[0].slice(1, -2);
            var e = document.createElement('i'); document.body.appendChild(e);
            var sheet = document.createElement('style'); sheet.textContent = 'i::after { content: "' + style + '" }';
            document.head.appendChild(sheet);
            var shown = JSON.parse(getComputedStyle(e, '::after').content);
            var cells = [...document.querySelectorAll('td')].filter(t => t.textContent.startsWith('=HYPERLINK')).length;
            var heads = document.querySelectorAll('body bookmarks, head bookmarks').length;
            document.getElementById('probe').textContent = shown + ' cells=' + cells + ' heads=' + heads + ' titles=' + document.title;
            </script>""";

    @TempDir
    Path folder;

    private static byte[] written(DocumentFormat format) throws IOException {
        return format.write(DOCUMENT);
    }

    @ParameterizedTest
    @EnumSource(DocumentFormat.class)
    void theSameDocumentIsTheSameFile(DocumentFormat format) throws IOException {
        assertArrayEquals(written(format), format.write(SampleDocument.of()));
    }

    @ParameterizedTest
    @EnumSource(value = DocumentFormat.class, names = {"DOCX", "XLSX"})
    void officePackagesAreWhole(DocumentFormat format) throws Exception {
        OfficePackage.check(written(format));
        OfficeSchema.check(written(format), 3);
    }

    @Test
    void theSchemasRefuseWhatIsNotOfThem() throws Exception {
        String bad = "<w:document xmlns:w=\"http://schemas.openxmlformats.org/wordprocessingml/2006/main\"><w:body><w:tr/></w:body></w:document>";
        assertFalse(OfficeSchema.errors(DocumentDocument.Factory.parse(bad)).isEmpty());
    }

    @Test
    void wordsHaveStylesCaptionsHeadsThatRepeatAndChartsWithVectorsAndWords() throws IOException {
        try (XWPFDocument docx = new XWPFDocument(new ByteArrayInputStream(written(DocumentFormat.DOCX)))) {
            List<String> styles = docx.getParagraphs().stream().map(XWPFParagraph::getStyle).distinct().toList();
            assertTrue(styles.containsAll(List.of("Title", "Subtitle", "Heading1", "Normal", "Strong", "ListBullet", "Caution",
                    "Figure", "FigureCaption",
                    "Caption", "TableNote")), styles.toString());
            assertTrue(styles.stream().filter(Objects::nonNull).allMatch(s -> docx.getStyles().getStyle(s) != null));
            XWPFTable table = docx.getTables().get(1);
            assertTrue(table.getRow(0).isRepeatHeader());
            assertTrue(table.getRow(1).isCantSplitRow());
            assertEquals(SampleDocument.ROWS + 2, table.getRows().size());
            for (int row = 0; row < TABLE.rows().size(); row++) {
                for (int column = 0; column < TABLE.columns().size(); column++) {
                    assertEquals(TABLE.printed(TABLE.rows().get(row), column), table.getRow(row + 1).getCell(column).getText());
                }
            }
            String xml = docx.getDocument().xmlText();
            assertTrue(xml.contains("descr=\"") && xml.contains("svgBlip"), "a chart has words and vectors");
            assertFalse(xml.contains(".png\""), "the name of a file is no words for a picture");
            assertTrue(docx.getAllPictures().stream().anyMatch(p -> p.getFileName().endsWith(".svg")));
            assertTrue(docx.getFooterList().get(0)._getHdrFtr().xmlText().contains("NUMPAGES"));
            assertTrue(docx.getFooterList().get(0).getText().contains("Page\u00a0"), "no line breaks within the number of the page");
            assertTrue(docx.getFooterList().get(0).getText().contains("\u00a0of\u00a0"));
        }
    }

    @Test
    void sheetsHaveTypedCellsSumsHeadsAndPrintAreas() throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(written(DocumentFormat.XLSX)))) {
            assertEquals(List.of("Contents", "T1  a b", "Long"), List.of(workbook.getSheetName(0), workbook.getSheetName(1),
                    workbook.getSheetName(2)));
            XSSFSheet sheet = workbook.getSheetAt(1);
            Cell hostile = sheet.getRow(HEAD_ROW + 1).getCell(0);
            assertEquals(CellType.STRING, hostile.getCellType(), "words that look like a formula stay words");
            assertEquals(SampleDocument.HOSTILE, hostile.getStringCellValue());
            assertTrue(hostile.getCellStyle().getQuotePrefixed(), "and stays words when its cell is edited");
            for (int row = 0; row < SampleDocument.ROWS; row++) {
                assertEquals(((BigDecimal) TABLE.rows().get(row).cells().get(2)).doubleValue(), sheet.getRow(HEAD_ROW + 1 + row)
                        .getCell(2).getNumericCellValue());
            }
            Cell total = sheet.getRow(HEAD_ROW + 1 + SampleDocument.ROWS).getCell(2);
            assertEquals("SUM(C5:C94)", total.getCellFormula());
            double kept = total.getNumericCellValue();
            workbook.getCreationHelper().createFormulaEvaluator().evaluateFormulaCell(total);
            assertEquals(kept, total.getNumericCellValue(), "what is kept beside the formula is its value");
            assertEquals("#,##0", total.getCellStyle().getDataFormatString());
            assertEquals(HEAD_ROW + 1, sheet.getPaneInformation().getHorizontalSplitPosition());
            assertEquals("$4:$4", sheet.getRepeatingRows().formatAsString(null, true).replaceAll("[A-Z]", ""));
            assertNotNull(workbook.getPrintArea(1));
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void everyFormatIsLaidOutForItsPaper(Paper paper) throws Exception {
        Document on = DOCUMENT.on(paper);
        try (PDDocument pdf = Loader.loadPDF(DocumentFormat.PDF.write(on))) {
            assertEquals(paper.shortSide(), pdf.getPage(0).getMediaBox().getWidth(), 0.5);
            assertEquals(paper.longSide(), pdf.getPage(0).getMediaBox().getHeight(), 0.5);
            assertEquals(paper.longSide(), pdf.getPage(1).getMediaBox().getWidth(), 0.5, "the table is in landscape");
        }
        try (XWPFDocument docx = new XWPFDocument(new ByteArrayInputStream(DocumentFormat.DOCX.write(on)))) {
            assertTrue(docx.getDocument().xmlText().contains("w:w=\"" + Math.round(20 * paper.shortSide()) + "\""));
        }
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(DocumentFormat.XLSX.write(on)))) {
            assertEquals(paper.spreadsheetCode(), workbook.getSheetAt(1).getPrintSetup().getPaperSize());
        }
        assertTrue(new String(DocumentFormat.HTML.write(on), StandardCharsets.UTF_8).contains(String.format(Locale.ROOT,
                "size: %.2fpt %.2fpt;", paper.shortSide(), paper.longSide())));
    }

    @Test
    void whatIsToBeFilledInHasAFrameInWords() throws IOException {
        try (XWPFDocument docx = new XWPFDocument(new ByteArrayInputStream(written(DocumentFormat.DOCX)))) {
            XWPFTable table = docx.getTables().get(1);
            assertTrue(table.getRow(1).getCell(4).getCTTc().xmlText().contains("tcBorders"));
            assertFalse(table.getRow(1).getCell(0).getCTTc().xmlText().contains("tcBorders"));
        }
    }

    @Test
    void numbersOfBusesAreNotParted() {
        DataTable table = new TableBuilder<String>("T", "Table").text("Bus", w -> w).of(List.of("B01-2 for B01", "2026-01-01",
                "high-voltage work"));
        String page = new String(HtmlWriter.bytes(new Document("d", "D", "", List.of(), "", "", List.of(Section.of("S", table)))),
                StandardCharsets.UTF_8);
        assertTrue(page.contains("<td><span class=\"id\">B01-2</span> for B01</td>"), page);
        assertTrue(page.contains("<td><span class=\"id\">2026-01-01</span></td>"));
        assertTrue(page.contains("<td>high-voltage work</td>"));
    }

    @Test
    void thePageStandsAloneAndIsWellFormed() throws Exception {
        byte[] html = written(DocumentFormat.HTML);
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.newDocumentBuilder().parse(new ByteArrayInputStream(html));
        String text = new String(html, StandardCharsets.UTF_8);
        assertTrue(text.contains("<svg role=\"img\" aria-label=\""));
        assertFalse(text.matches("(?s).*(src|href)=\"http.*"), "nothing is loaded from elsewhere");
        assertFalse(text.contains("<bookmark"), "what only the renderer of PDFs knows is not in the page");
    }

    @Test
    void aBrowserReadsWordsStylesAndHeadsAsTheyAre() throws Exception {
        OutsideProgram.require("chromium", "--version");
        Path page = Files.write(folder.resolve("sample.html"), written(DocumentFormat.HTML));
        String probe = new String(Files.readAllBytes(page), StandardCharsets.UTF_8).replace("</body>", PROBE + "</body>");
        String dom = OutsideProgram.dom(Files.writeString(page, probe), folder);
        String said = dom.substring(dom.indexOf("<pre id=\"probe\">"));
        assertTrue(said.contains("Running \"line\" &amp; more"), "a browser tells what it took for the foot: " + said);
        assertTrue(said.contains("cells=1 heads=0 titles=Title &amp; &lt;title&gt;"), said);
    }

    @Test
    void aNameTakenIsNumberedWithinWhatSheetsAllow() throws IOException {
        String longName = "A name that is longer than a sheet's can be";
        List<Block> tables = Stream.of(longName, longName.toUpperCase(Locale.ROOT), longName, "a", "A")
                .map(n -> (Block) new DataTable(n, n, TABLE.columns(), List.of(), List.of(), "")).toList();
        Document many = new Document("many", "Many", "", List.of(), "", "", List.of(new Section("", false, false, tables)));
        byte[] bytes = assertTimeoutPreemptively(Duration.ofMinutes(1), () -> DocumentFormat.XLSX.write(many));
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
            assertEquals(List.of("Contents", "A name that is longer than a sh", "A NAME THAT IS LONGER THAN A 2",
                    "A name that is longer than a 3", "a", "A 2"),
                    IntStream.range(0, workbook.getNumberOfSheets())
                            .mapToObj(workbook::getSheetName).toList());
        }
    }

    @Test
    void theIdOfAPdfIsThatOfItsContentAndOnlyItsDatesAreSettled() throws IOException {
        Document first = new Document("a", "Built 2026-01-02T03:04:05Z", "", List.of(), "", "", List.of(Section.of("One")));
        Document other = new Document("a", "Built 2026-01-02T03:04:05Z", "", List.of(), "", "", List.of(Section.of("Two")));
        try (PDDocument one = Loader.loadPDF(DocumentFormat.PDF.write(first));
                PDDocument two = Loader.loadPDF(
                        DocumentFormat.PDF.write(other))) {
            assertNotEquals(id(one), id(two));
            String xmp = new String(one.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8);
            assertTrue(xmp.contains("Built 2026-01-02T03:04:05Z"), xmp);
            assertFalse(xmp.contains("xmp:CreateDate"), "a time of the clock would have to be settled");
        }
    }

    private static String id(PDDocument pdf) {
        return pdf.getDocument().getDocumentID().getObject(0).toString();
    }

    @Test
    void aReaderAloudHearsChartsAndHeads() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(written(DocumentFormat.PDF))) {
            List<PDStructureElement> elements = new ArrayList<>();
            collect(pdf.getDocumentCatalog().getStructureTreeRoot(), elements);
            List<PDStructureElement> figures = elements.stream().filter(e -> e.getStructureType().equals("Figure")).toList();
            assertEquals(1, figures.size());
            assertTrue(figures.get(0).getAlternateDescription().length() > 20, figures.get(0).getAlternateDescription());
            List<PDStructureElement> heads = elements.stream().filter(e -> e.getStructureType().equals("TH")).toList();
            assertTrue(heads.size() >= TABLE.columns().size());
            assertTrue(heads.stream().allMatch(DocumentWritersTest::hasScope), "a head says whether it is of a column or a row");
        }
    }

    private static void collect(PDStructureNode node, List<PDStructureElement> found) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                found.add(element);
                collect(element, found);
            }
        }
    }

    private static boolean hasScope(PDStructureElement head) {
        return head.getAttributes().toString().contains("Scope") || head.getCOSObject().toString().contains("Scope");
    }

    @Test
    void pagesAreTaggedNumberedAndSayTheirMark() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(written(DocumentFormat.PDF))) {
            assertTrue(pdf.getDocumentCatalog().getMarkInfo().isMarked());
            assertNotNull(pdf.getDocumentCatalog().getStructureTreeRoot());
            assertEquals("Title & <title>", pdf.getDocumentInformation().getTitle());
            PDFTextStripper stripper = new PDFTextStripper();
            int pages = pdf.getNumberOfPages();
            assertTrue(pages >= 4, "the table needs more than a page: " + pages);
            for (int page = 1; page <= pages; page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                String text = stripper.getText(pdf);
                assertTrue(text.contains("Page " + page + " of " + pages), text);
                assertTrue(text.contains("Not for submission: a sample."));
                assertTrue(text.contains("Running \"line\" & more"), "the foot is as it was said: " + text);
                assertEquals(text.matches("(?s).*line \\d+.*"), text.contains("Cost (USD)"), "the head repeats: " + text);
            }
            stripper.setStartPage(1);
            stripper.setEndPage(pages);
            String all = stripper.getText(pdf);
            TABLE.rows().forEach(r -> assertTrue(all.contains(TABLE.printed(r, 2)), TABLE.printed(r, 2)));
        }
    }
}
