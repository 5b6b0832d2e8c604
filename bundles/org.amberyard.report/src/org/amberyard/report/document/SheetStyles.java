package org.amberyard.report.document;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Cell styles of a workbook, each made once: a workbook may have few. */
public final class SheetStyles {
    /** The number format of dates. */
    static final String DATE = "yyyy-mm-dd";
    private static final short TEXT_POINTS = 10;
    private static final short TITLE_POINTS = 12;

    /** Words stand off from the figures of the column before them. */
    private static final short FROM_FIGURES = 1;

    private static final Pattern LIKE_FORMULA = Pattern.compile("[=+@\\t\\r-]");

    private final XSSFWorkbook workbook;
    private final Map<String, CellStyle> made = new HashMap<>();
    private final XSSFFont plain;
    private final XSSFFont bold;
    private final XSSFFont large;

    /** Styles of a workbook. */
    public SheetStyles(XSSFWorkbook workbook) {
        this.workbook = workbook;
        this.plain = font(false, TEXT_POINTS);
        this.bold = font(true, TEXT_POINTS);
        this.large = font(true, TITLE_POINTS);
    }

    private XSSFFont font(boolean isBold, short points) {
        XSSFFont font = workbook.createFont();
        font.setFontName("Arial");
        font.setFontHeightInPoints(points);
        font.setBold(isBold);
        return font;
    }

    /** A title. */
    public CellStyle title() {
        return made.computeIfAbsent("title", k -> wrapped(large));
    }

    /** Words. */
    public CellStyle words() {
        return made.computeIfAbsent("words", k -> wrapped(plain));
    }

    /** The head of a column. */
    public CellStyle head(boolean right) {
        return made.computeIfAbsent("head" + right, k -> {
            XSSFCellStyle style = style(bold);
            style.setBorderBottom(BorderStyle.THIN);
            style.setBorderTop(BorderStyle.MEDIUM);
            style.setWrapText(true);
            style.setVerticalAlignment(VerticalAlignment.BOTTOM);
            style.setAlignment(right ? HorizontalAlignment.RIGHT : HorizontalAlignment.LEFT);
            style.setIndention(right ? 0 : FROM_FIGURES);
            return style;
        });
    }

    /** A figure or words of a table in a number format. */
    public CellStyle cell(String format, boolean strong) {
        return made.computeIfAbsent("cell" + strong + format, k -> {
            XSSFCellStyle style = style(strong ? bold : plain);
            style.setDataFormat(workbook.createDataFormat().getFormat(format));
            boolean words = format.equals(CellFormat.TEXT.spreadsheet());
            style.setWrapText(words);
            style.setVerticalAlignment(VerticalAlignment.TOP);
            boolean left = words || format.equals(DATE);
            style.setAlignment(left ? HorizontalAlignment.LEFT : HorizontalAlignment.RIGHT);
            style.setIndention(left ? FROM_FIGURES : 0);
            if (strong) {
                style.setBorderTop(BorderStyle.THIN);
            }
            return style;
        });
    }

    /** Words in a cell; such as begin like a formula stay words also for who edits the cell. */
    public void write(Cell cell, String text, CellStyle style) {
        cell.setCellValue(text);
        cell.setCellStyle(LIKE_FORMULA.matcher(text).lookingAt() ? made.computeIfAbsent("quoted" + style.getIndex(), k -> quoted(style)) : style);
    }

    private CellStyle quoted(CellStyle style) {
        CellStyle quoted = workbook.createCellStyle();
        quoted.cloneStyleFrom(style);
        quoted.setQuotePrefixed(true);
        return quoted;
    }

    private XSSFCellStyle wrapped(XSSFFont font) {
        XSSFCellStyle style = style(font);
        style.setWrapText(true);
        style.setVerticalAlignment(VerticalAlignment.TOP);
        return style;
    }

    private XSSFCellStyle style(XSSFFont font) {
        XSSFCellStyle style = workbook.createCellStyle();
        style.setFont(font);
        return style;
    }
}
