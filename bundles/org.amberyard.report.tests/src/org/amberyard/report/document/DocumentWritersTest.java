package org.amberyard.report.document;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.DocumentDocument;
import org.w3c.dom.NodeList;

class DocumentWritersTest {
    private static final Document DOCUMENT = SampleDocument.of();
    private static final DataTable TABLE = DOCUMENT.tables().get(0);
    private static final int HEAD_ROW = 3;

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
            assertTrue(docx.getAllPictures().stream().anyMatch(p -> p.getFileName().endsWith(".svg")));
            assertTrue(docx.getFooterList().get(0)._getHdrFtr().xmlText().contains("NUMPAGES"));
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

    @Test
    void thePageStandsAloneAndIsWellFormed() throws Exception {
        byte[] html = written(DocumentFormat.HTML);
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        org.w3c.dom.Document page = factory.newDocumentBuilder().parse(new ByteArrayInputStream(html));
        NodeList cells = page.getElementsByTagName("td");
        long data = IntStream.range(0, cells.getLength())
                .filter(i -> cells.item(i).getTextContent().equals(SampleDocument.HOSTILE)).count();
        assertEquals(1, data, "hostile words are words");
        String text = new String(html, StandardCharsets.UTF_8);
        assertTrue(text.contains("<svg role=\"img\" aria-label=\""));
        assertFalse(text.matches("(?s).*(src|href)=\"http.*"), "nothing is loaded from elsewhere");
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
                assertEquals(text.matches("(?s).*line \\d+.*"), text.contains("Cost (USD)"), "the head repeats: " + text);
            }
            stripper.setStartPage(1);
            stripper.setEndPage(pages);
            String all = stripper.getText(pdf);
            TABLE.rows().forEach(r -> assertTrue(all.contains(TABLE.printed(r, 2)), TABLE.printed(r, 2)));
        }
    }
}
