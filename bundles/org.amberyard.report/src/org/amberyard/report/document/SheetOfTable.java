package org.amberyard.report.document;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * A sheet with one table: title, a head that stays in sight and repeats on paper, typed cells, footnotes. Totals of figures that
 * are printed rounded are sums of these, as formulas. Words are stored as words, whatever sign they start with.
 */
final class SheetOfTable {
    private static final Pattern DATE = Pattern.compile("(19|20|21)\\d\\d-\\d\\d-\\d\\d");
    private static final int UNIT_WIDTH = 256;
    private static final int LEAST_CHARACTERS = 11;
    private static final int MOST_CHARACTERS = 60;
    private static final float LINE_POINTS = 13.5f;
    /** Bold words and breaks between words take more room than characters. */
    private static final int HEAD_SPARE = 4;

    private final XSSFSheet sheet;
    private final DataTable table;
    private final Document document;
    private final SheetStyles styles;
    private final int[] characters;
    private int at;

    SheetOfTable(XSSFSheet sheet, DataTable table, Document document, SheetStyles styles) {
        this.sheet = sheet;
        this.table = table;
        this.document = document;
        this.styles = styles;
        this.characters = IntStream.range(0, table.columns().size())
                .map(c -> Math.min(MOST_CHARACTERS, Math.max(LEAST_CHARACTERS, characters(c) + 2))).toArray();
    }

    /** Characters of a column on one line: as many as its longest word or figure has, or as its share of the width. */
    private int characters(int column) {
        DataTable.Column of = table.columns().get(column);
        int most = (int) (of.width() * ColumnWidths.LETTERS_PER_PART);
        List<String> cells = ColumnWidths.cells(table, column).toList();
        int longest = cells.stream().mapToInt(String::length).max().orElse(0);
        int word = Stream.concat(Stream.of(of.heading()), cells.stream()).mapToInt(SheetOfTable::longestWord).max().orElse(0);
        return Math.max(Math.min(ColumnWidths.LONGEST_WORD, of.format().right() ? Math.max(word, longest) : word),
                of.toFill() ? most : Math.min(most, longest));
    }

    private static int longestWord(String text) {
        return (int) ColumnWidths.longestWord(text, String::length);
    }

    void write() {
        words(table.title(), true);
        if (!table.mark().isEmpty()) {
            words(table.mark(), true);
        }
        at++;
        int head = at;
        addHead();
        int first = at;
        table.rows().forEach(r -> addRow(r, first));
        at++;
        table.notes().forEach(n -> words(n, false));
        words(document.running(), false);
        for (int i = 0; i < characters.length; i++) {
            sheet.setColumnWidth(i, UNIT_WIDTH * characters[i]);
        }
        SheetPages.set(sheet, document, table.isWide(), at, table.columns().size());
        SheetPages.head(sheet, 1, head, head);
    }

    /** Words over the whole width of the table, on as many lines as they need. */
    private void words(String text, boolean strong) {
        Row row = sheet.createRow(at);
        Cell cell = row.createCell(0);
        styles.write(cell, text, strong ? styles.title() : styles.words());
        if (characters.length > 1) {
            sheet.addMergedRegion(new CellRangeAddress(at, at, 0, characters.length - 1));
        }
        row.setHeightInPoints(LINE_POINTS * lines(text, Arrays.stream(characters).sum()) + (strong ? 3 : 0));
        at++;
    }

    private static int lines(String text, int width) {
        return Math.max(1, (int) Math.ceil((text.length() + 1.0) / width));
    }

    private void addHead() {
        Row row = sheet.createRow(at);
        for (int i = 0; i < table.columns().size(); i++) {
            Cell cell = row.createCell(i);
            styles.write(cell, table.columns().get(i).heading(), styles.head(table.columns().get(i).format().right()));
        }
        row.setHeightInPoints(LINE_POINTS * IntStream.range(0, characters.length)
                .map(c -> lines(table.columns().get(c).heading(), Math.max(1, characters[c] - HEAD_SPARE))).max().orElse(1));
        at++;
    }

    private void addRow(DataTable.Row from, int firstLine) {
        Row row = sheet.createRow(at);
        for (int i = 0; i < table.columns().size(); i++) {
            Cell cell = row.createCell(i);
            Object value = from.cells().get(i);
            boolean strong = from.kind() == DataTable.Kind.TOTAL || from.kind() == DataTable.Kind.GROUP;
            if (value instanceof BigDecimal number) {
                cell.setCellValue(number.doubleValue());
                if (from.kind() == DataTable.Kind.TOTAL) {
                    cell.setCellFormula("SUM(" + new CellRangeAddress(firstLine, at - 1, i, i).formatAsString() + ")");
                    cell.setCellValue(number.doubleValue());
                }
                cell.setCellStyle(styles.cell(table.columns().get(i).format().of(number).spreadsheet(), strong));
            } else {
                setWords(cell, value == null ? "" : value.toString(), strong);
            }
        }
        row.setHeightInPoints(LINE_POINTS * IntStream.range(0, characters.length)
                .map(c -> lines(table.printed(from, c), characters[c])).max().orElse(1));
        at++;
    }

    /** Words; a date among them is one of the spreadsheet, to sort and to count with. */
    private void setWords(Cell cell, String words, boolean strong) {
        Optional<LocalDate> date = date(words);
        if (date.isPresent()) {
            cell.setCellStyle(styles.cell(SheetStyles.DATE, strong));
            cell.setCellValue(date.get());
            return;
        }
        CellStyle style = styles.cell(CellFormat.TEXT.spreadsheet(), strong);
        if (words.isEmpty()) {
            cell.setCellStyle(style);
        } else {
            styles.write(cell, words, style);
        }
    }

    private static Optional<LocalDate> date(String words) {
        if (!DATE.matcher(words).matches()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(words));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
