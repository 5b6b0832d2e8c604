package org.amberyard.exchange.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.CancellationException;
import javax.xml.parsers.ParserConfigurationException;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.exchange.ImportException;
import org.amberyard.model.io.QuietLogging;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Workbooks of ECMA-376 (XLSX), read as a stream so that a sheet of a million rows is refused before it fills the memory. The
 * library refuses packages that inflate a hundredfold, entities and document types.
 */
final class WorkbookReader {
    private static final int MOST_SHEETS = 50;
    private static final int BOOK_HEAD = 1 << 16;

    private final String file;
    private final ReadingProgress progress;

    private WorkbookReader(String file, ReadingProgress progress) {
        this.file = file;
        this.progress = progress;
    }

    /** @throws ImportException when the file is no workbook, is damaged or holds too much */
    static List<Sheet> read(Path path, ReadingProgress progress) throws IOException, ImportException {
        QuietLogging.set();
        String file = path.getFileName().toString();
        try {
            PackedParts.hold(path);
            return opened(path, file, progress);
        } catch (TooMuch e) {
            throw SheetReader.refused(file, e.getMessage());
        } catch (CancellationException e) {
            throw e;
        } catch (OpenXML4JException | SAXException | ParserConfigurationException | IOException | RuntimeException e) {
            // The library answers damaged files with exceptions of many kinds.
            throw SheetReader.refused(file, "The file is not a workbook that can be read (" + firstLine(e)
                    + "); open it in a spreadsheet program and save it again as XLSX.");
        }
    }

    private static List<Sheet> opened(Path path, String file, ReadingProgress progress)
            throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
        try (OPCPackage workbook = OPCPackage.open(path.toFile(), PackageAccess.READ)) {
            return new WorkbookReader(file, progress).sheets(workbook);
        }
    }

    private static String firstLine(Exception e) {
        return String.valueOf(e.getMessage()).lines().findFirst().orElse(e.getClass().getSimpleName());
    }

    private List<Sheet> sheets(OPCPackage workbook) throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
        XSSFReader reader = new XSSFReader(workbook);
        ReadingBudget budget = new ReadingBudget();
        SharedTexts texts = texts(reader, budget);
        CellFormats formats = new CellFormats(reader.getStylesTable(), is1904(reader));
        List<Sheet> sheets = new ArrayList<>();
        Iterator<InputStream> parts = reader.getSheetsData();
        while (parts.hasNext()) {
            if (sheets.size() == MOST_SHEETS) {
                throw new TooMuch("The workbook has more than 50 sheets; remove those that are not needed.");
            }
            progress.step(file, 0);
            try (InputStream part = parts.next()) {
                String name = ((XSSFReader.SheetIterator) parts).getSheetName();
                sheets.add(sheet(name, part, new WorkbookSheet(texts, formats, budget, rows -> progress.step(file, rows))));
            }
        }
        return sheets;
    }

    private static SharedTexts texts(XSSFReader reader, ReadingBudget budget)
            throws IOException, InvalidFormatException, SAXException, ParserConfigurationException {
        SharedTexts texts = new SharedTexts(budget);
        try (InputStream part = reader.getSharedStringsData()) {
            if (part != null) {
                parse(part, texts);
            }
        }
        return texts;
    }

    private static void parse(InputStream part, DefaultHandler content) throws IOException, SAXException, ParserConfigurationException {
        XMLReader xml = XMLHelper.newXMLReader();
        xml.setContentHandler(content);
        xml.setErrorHandler(content);
        xml.parse(new InputSource(part));
    }

    private Sheet sheet(String name, InputStream part, WorkbookSheet content) throws IOException, SAXException, ParserConfigurationException {
        parse(part, content);
        List<SheetRow> rows = content.rows();
        NumberStyle numbers = NumberStyle.of(rows.stream().flatMap(r -> r.cells().stream())
                .filter(c -> c.kind() == SheetCell.Kind.TEXT).map(SheetCell::text).toList());
        return new Sheet(file, name, rows, numbers, content.remarks(), List.of());
    }

    /** Workbooks made on some systems count their days from 1904. */
    private static boolean is1904(XSSFReader reader) throws IOException, InvalidFormatException {
        try (InputStream book = reader.getWorkbookData()) {
            String text = new String(book.readNBytes(BOOK_HEAD), StandardCharsets.UTF_8);
            return text.matches("(?s).*<(\\w+:)?workbookPr[^>]*date1904=\"(1|true)\".*");
        }
    }
}
