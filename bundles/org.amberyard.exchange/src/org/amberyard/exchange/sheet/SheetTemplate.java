package org.amberyard.exchange.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.amberyard.model.io.QuietLogging;
import org.amberyard.model.io.SteadyZip;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.study.Study;
import org.amberyard.study.StudyUnits;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A sheet of a kind to be filled in: headers with units, an example row, and what each column means and allows. */
public final class SheetTemplate {
    private static final int WIDTH = 20 * 256;
    private static final int WIDE = 70 * 256;

    private final SheetKind kind;
    private final List<SheetColumn> columns;
    private final Study study;

    /** A template in the units of a study. */
    public SheetTemplate(SheetKind kind, Study study) {
        this.kind = kind;
        this.columns = kind.columns(study);
        this.study = study;
    }

    private String header(SheetColumn column) {
        return column.header(StudyUnits.of(study), StudyUnits.currency(study));
    }

    /** What a column allows, in words. */
    String allowed(SheetColumn column) {
        if (!column.choices().isEmpty()) {
            return String.join(", ", column.choices());
        }
        return switch (column.content()) {
            case NUMBER -> column.field().map(f -> range(FieldInfo.of(f))).orElse("a number");
            case DATE -> "a date such as 2025-09-04 or 9/4/2025";
            case CLOCK -> "a time such as 6:35 or 2:05 pm";
            case FLAG -> "yes or no";
            case NAME -> "the name of one of the study";
            case TEXT, CHOICE -> "text";
        };
    }

    private static String range(FieldInfo info) {
        return info.min().isPresent() && info.min().getAsDouble() == 0 ? "a number of at least 0" : "a number";
    }

    /**
     * Writes the template: a workbook, or delimited text where the name ends in .csv.
     *
     * @throws IOException when the file cannot be written
     */
    public void write(Path path) throws IOException {
        if (path.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".csv")) {
            writeText(path);
        } else {
            writeWorkbook(path);
        }
    }

    private void writeText(Path path) throws IOException {
        try (CSVPrinter printer = new CSVPrinter(Files.newBufferedWriter(path, StandardCharsets.UTF_8), CSVFormat.RFC4180)) {
            printer.printRecord(columns.stream().map(this::header).toList());
            printer.printRecord(columns.stream().map(kind::example).toList());
        }
    }

    private void writeWorkbook(Path path) throws IOException {
        QuietLogging.set();
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            CellStyle head = head(book);
            XSSFSheet sheet = book.createSheet(kind.label());
            row(sheet, 0, columns.stream().map(this::header).toList(), head);
            row(sheet, 1, columns.stream().map(kind::example).toList(), null);
            columns.forEach(c -> sheet.setColumnWidth(columns.indexOf(c), WIDTH));
            sheet.createFreezePane(1, 1);
            writeMeanings(book.createSheet("Columns"), head);
            POIXMLProperties.CoreProperties core = book.getProperties().getCoreProperties();
            core.setCreated(Optional.of(new Date(SteadyZip.ALWAYS_MS)));
            core.setModified(Optional.of(new Date(SteadyZip.ALWAYS_MS)));
            ByteArrayOutputStream packed = new ByteArrayOutputStream();
            book.write(packed);
            Files.write(path, SteadyZip.of(packed.toByteArray()));
        }
    }

    private void writeMeanings(XSSFSheet sheet, CellStyle head) {
        List<String> heads = List.of("Column", "Needed", "Allowed", "Meaning");
        row(sheet, 0, heads, head);
        for (int place = 0; place < columns.size(); place++) {
            SheetColumn column = columns.get(place);
            row(sheet, place + 1, List.of(header(column), column.required() ? "yes" : "no", allowed(column), column.meaning()), null);
        }
        row(sheet, columns.size() + 2, List.of("", "", "", kind.purpose()), null);
        for (int place = 0; place < heads.size(); place++) {
            sheet.setColumnWidth(place, place < 2 ? WIDTH : WIDE);
        }
        sheet.createFreezePane(0, 1);
    }

    private static CellStyle head(XSSFWorkbook book) {
        Font bold = book.createFont();
        bold.setBold(true);
        CellStyle style = book.createCellStyle();
        style.setFont(bold);
        style.setWrapText(true);
        return style;
    }

    private static void row(XSSFSheet sheet, int number, List<String> texts, CellStyle style) {
        Row row = sheet.createRow(number);
        for (int place = 0; place < texts.size(); place++) {
            Cell cell = row.createCell(place);
            String text = texts.get(place);
            if (style == null && text.matches("\\d+(\\.\\d+)?")) {
                cell.setCellValue(Double.parseDouble(text));
            } else {
                cell.setCellValue(text);
            }
            if (style != null) {
                cell.setCellStyle(style);
            }
        }
    }
}
