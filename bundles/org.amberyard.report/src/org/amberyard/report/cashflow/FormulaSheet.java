package org.amberyard.report.cashflow;

import org.amberyard.report.document.SheetPages;
import org.amberyard.report.document.SheetStyles;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** A sheet that is written from the top down. Rows and columns count from 0; references count as spreadsheets do. */
final class FormulaSheet {
    /** Money. */
    static final String MONEY = "#,##0.00;-#,##0.00;\"–\"";
    /** Any figure. */
    static final String FIGURE = "#,##0.00####";
    /** A share. */
    static final String SHARE = "0.00%";
    /** A factor. */
    static final String FACTOR = "0.000000";
    private static final String WORDS = "@";
    private static final int UNIT_WIDTH = 256;
    private static final float HEAD_POINTS = 42;
    /** Columns that words may run over. */
    private static final int WORDS_COLUMNS = 5;

    private final XSSFSheet sheet;
    private final SheetStyles styles;
    private int next;

    FormulaSheet(XSSFSheet sheet, SheetStyles styles) {
        this.sheet = sheet;
        this.styles = styles;
    }

    String name() {
        return sheet.getSheetName();
    }

    /** Row that comes next. */
    int next() {
        return next;
    }

    /** Starts a row. */
    int row() {
        sheet.createRow(next);
        return next++;
    }

    void skip() {
        next++;
    }

    void title(String text) {
        over(text, styles.title());
    }

    void line(String text) {
        over(text, styles.words());
    }

    /** Words on one line that may run over the columns beside. */
    private void over(String text, CellStyle style) {
        int row = row();
        words(row, 0, text, style);
        sheet.addMergedRegion(new CellRangeAddress(row, row, 0, WORDS_COLUMNS - 1));
    }

    void head(int row, int column, String text, boolean right) {
        sheet.getRow(row).setHeightInPoints(HEAD_POINTS);
        words(row, column, text, styles.head(right));
    }

    void words(int row, int column, String text) {
        words(row, column, text, styles.cell(WORDS, false));
    }

    private void words(int row, int column, String text, CellStyle style) {
        styles.write(sheet.getRow(row).createCell(column), text, style);
    }

    void number(int row, int column, double value, String format) {
        cell(row, column, styles.cell(format, false)).setCellValue(value);
    }

    void formula(int row, int column, String formula, String format) {
        formula(row, column, formula, format, false);
    }

    void formula(int row, int column, String formula, String format, boolean strong) {
        cell(row, column, styles.cell(format, strong)).setCellFormula(formula);
    }

    private Cell cell(int row, int column, CellStyle style) {
        Row of = sheet.getRow(row);
        Cell cell = of.createCell(column);
        cell.setCellStyle(style);
        return cell;
    }

    void widths(int... characters) {
        for (int i = 0; i < characters.length; i++) {
            sheet.setColumnWidth(i, characters[i] * UNIT_WIDTH);
        }
    }

    /** Width of all columns from one on. */
    void widthsFrom(int column, int count, int characters) {
        for (int i = column; i < column + count; i++) {
            sheet.setColumnWidth(i, characters * UNIT_WIDTH);
        }
    }

    /** Head that stays in sight, and paper. */
    void print(String running, int headColumns, int headRow, int columns) {
        SheetPages.set(sheet, running, "", true, next, columns);
        SheetPages.head(sheet, headColumns, headRow, headRow);
    }

    /** A cell of this sheet by its place, in formulas of others. */
    String at(int row, int column) {
        return "'" + name() + "'!" + new CellReference(row, column, true, true).formatAsString();
    }

    /** A cell of the same sheet. */
    static String here(int row, int column) {
        return new CellReference(row, column, false, false).formatAsString();
    }

    /** A cell of the same sheet that stays where the formula is copied. */
    static String fixed(int row, int column) {
        return new CellReference(row, column, true, true).formatAsString();
    }

    /** Cells of a row of the same sheet. */
    static String across(int row, int first, int last) {
        return fixed(row, first) + ":" + fixed(row, last);
    }
}
