package org.amberyard.report.document;

import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** How a sheet prints: its paper, as wide as a page, with page numbers and what every page must say. */
public final class SheetPages {
    /** Eight points; the blank keeps digits that follow out of the code. */
    private static final String SMALL = "&8 ";

    private SheetPages() {
    }

    static void set(XSSFSheet sheet, Document document, boolean wide, int rows, int columns) {
        set(sheet, document.running(), document.mark(), wide, rows, columns);
        on(sheet, document.paper());
    }

    /**
     * Sets paper, area, head and foot.
     *
     * @param running line at the foot
     * @param mark what every page must say; may be empty
     * @param wide true for landscape
     * @param rows rows printed
     * @param columns columns printed
     */
    public static void set(XSSFSheet sheet, String running, String mark, boolean wide, int rows, int columns) {
        PrintSetup setup = sheet.getPrintSetup();
        setup.setLandscape(wide);
        setup.setFitWidth((short) 1);
        setup.setFitHeight((short) 0);
        sheet.setFitToPage(true);
        sheet.getFooter().setLeft(SMALL + plain(running));
        sheet.getFooter().setRight(SMALL + "Page &P of &N");
        sheet.getHeader().setCenter(plain(mark));
        sheet.getWorkbook().setPrintArea(sheet.getWorkbook().getSheetIndex(sheet), 0, Math.max(0, columns - 1), 0, Math.max(0,
                rows - 1));
    }

    /** Lays a sheet out for paper. */
    public static void on(XSSFSheet sheet, Paper paper) {
        sheet.getPrintSetup().setPaperSize((short) paper.spreadsheetCode());
    }

    /** Repeats rows at the head of every page and keeps them in sight. */
    public static void head(XSSFSheet sheet, int columns, int firstRow, int lastRow) {
        sheet.createFreezePane(columns, lastRow + 1);
        sheet.setRepeatingRows(new CellRangeAddress(firstRow, lastRow, -1, -1));
    }

    /** In heads and feet an ampersand starts a code. */
    private static String plain(String text) {
        return text.replace("&", "&&");
    }
}
