package org.amberyard.report.document;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.amberyard.model.io.SteadyZip;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes the tables of a document as a workbook: a sheet that lists them, then a sheet for each. */
final class XlsxWriter {
    private static final int TITLE_WIDTH = 80 * 256;

    private final Document document;
    private final XSSFWorkbook workbook = new XSSFWorkbook();
    private final SheetStyles styles = new SheetStyles(workbook);
    private final Set<String> names = new HashSet<>();

    private XlsxWriter(Document document) {
        this.document = document;
    }

    static byte[] bytes(Document document) throws IOException {
        XlsxWriter writer = new XlsxWriter(document);
        try (writer.workbook) {
            return writer.written();
        }
    }

    private byte[] written() throws IOException {
        addContents();
        for (DataTable table : document.tables()) {
            new SheetOfTable(workbook.createSheet(name(table.name())), table, document, styles).write();
        }
        OfficeProperties.set(workbook.getProperties(), document.title(), document.subtitle());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        workbook.write(out);
        return SteadyZip.of(out.toByteArray());
    }

    private String name(String wanted) {
        String base = SheetNames.clean(wanted).isEmpty() ? "Table" : SheetNames.clean(wanted);
        String name = base;
        for (int i = 2; !names.add(name.toLowerCase(Locale.ROOT)); i++) {
            name = SheetNames.numbered(base, i);
        }
        return name;
    }

    private void addContents() {
        XSSFSheet sheet = workbook.createSheet(name("Contents"));
        int at = 0;
        at = line(sheet, at, document.title(), true);
        at = document.subtitle().isEmpty() ? at : line(sheet, at, document.subtitle(), false);
        at = document.mark().isEmpty() ? at : line(sheet, at, document.mark(), true);
        for (Document.Fact fact : document.facts()) {
            at = line(sheet, at, fact.label() + ": " + fact.value(), false);
        }
        at++;
        for (DataTable table : document.tables()) {
            at = line(sheet, at, table.title(), false);
        }
        sheet.setColumnWidth(0, TITLE_WIDTH);
        SheetPages.set(sheet, document, false, at, 1);
    }

    private int line(XSSFSheet sheet, int at, String text, boolean bold) {
        Row row = sheet.createRow(at);
        Cell cell = row.createCell(0);
        styles.write(cell, text, bold ? styles.title() : styles.words());
        return at + 1;
    }
}
