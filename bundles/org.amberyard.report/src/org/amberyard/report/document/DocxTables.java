package org.amberyard.report.document;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import org.apache.poi.xwpf.usermodel.TableWidthType;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFTable;
import org.apache.poi.xwpf.usermodel.XWPFTableCell;
import org.apache.poi.xwpf.usermodel.XWPFTableRow;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTBorder;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTTbl;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTTblGrid;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTTblPr;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTTcBorders;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTTcPr;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STBorder;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STTblLayoutType;

/** Tables of a word processor: fixed widths, a head that repeats on every page, no row cut by a page. */
final class DocxTables {
    private static final double LABEL_SHARE = 0.24;
    /** Width of the frame around what is to be filled in, eighths of a point. */
    private static final int BOX_EIGHTHS = 4;
    /** Twentieths of a point, in which widths are given, in a point. */
    private static final int POINT = 20;

    private final XWPFDocument docx;
    private final DocxPages pages;

    DocxTables(XWPFDocument docx, DocxPages pages) {
        this.docx = docx;
        this.pages = pages;
    }

    /** Labels and values below the title. */
    void addFacts(List<Document.Fact> facts) {
        int text = pages.textWidth(false);
        int label = (int) (text * LABEL_SHARE);
        XWPFTable table = empty(facts.size(), new int[] {label, text - label});
        for (int i = 0; i < facts.size(); i++) {
            fill(table.getRow(i).getCell(0), "TableText", facts.get(i).label(), false);
            fill(table.getRow(i).getCell(1), "TableText", facts.get(i).value(), false);
        }
        docx.createParagraph().setSpacingAfter(0);
    }

    /** A table of data. */
    void add(DataTable table, boolean wide, RowSetting setting) {
        ColumnWidths columns = ColumnWidths.on(table, setting, (double) pages.textWidth(wide) / POINT);
        XWPFTable made = empty(table.rows().size() + 1, widths(columns, pages.textWidth(wide)));
        String size = columns.setting().style();
        XWPFTableRow head = made.getRow(0);
        head.setRepeatHeader(true);
        for (int column = 0; column < table.columns().size(); column++) {
            head.getCell(column).setVerticalAlignment(XWPFTableCell.XWPFVertAlign.BOTTOM);
            fill(head.getCell(column), style(table, column, size), table.columns().get(column).heading(), true);
        }
        for (int row = 0; row < table.rows().size(); row++) {
            fill(made.getRow(row + 1), table, table.rows().get(row), size);
        }
        if (table.isShort()) {
            keepTogether(made);
        }
    }

    /** Each row stays on the page of the next. */
    private static void keepTogether(XWPFTable table) {
        table.getRows().subList(0, table.getNumberOfRows() - 1).forEach(r -> r.getTableCells().forEach(c -> c.getParagraphs()
                .forEach(p -> p.setKeepNext(true))));
    }

    private static void fill(XWPFTableRow made, DataTable table, DataTable.Row row, String size) {
        boolean bold = row.kind() != DataTable.Kind.LINE;
        for (int column = 0; column < table.columns().size(); column++) {
            String text = row.kind() == DataTable.Kind.GROUP && column > 0 ? "" : table.printed(row, column);
            fill(made.getCell(column), style(table, column, size), text, bold);
            if (table.columns().get(column).toFill() && row.kind() == DataTable.Kind.LINE) {
                box(made.getCell(column));
            }
        }
    }

    /** A frame around what the applicant fills in. */
    private static void box(XWPFTableCell cell) {
        CTTcPr properties = cell.getCTTc().isSetTcPr() ? cell.getCTTc().getTcPr() : cell.getCTTc().addNewTcPr();
        CTTcBorders borders = properties.addNewTcBorders();
        for (CTBorder side : List.of(borders.addNewTop(), borders.addNewLeft(), borders.addNewBottom(), borders.addNewRight())) {
            side.setVal(STBorder.SINGLE);
            side.setSz(BigInteger.valueOf(BOX_EIGHTHS));
            side.setColor("888888");
        }
    }

    private static String style(DataTable table, int column, String size) {
        return size + (table.columns().get(column).format().right() ? "Number" : "Text");
    }

    private static void fill(XWPFTableCell cell, String style, String text, boolean bold) {
        XWPFParagraph paragraph = cell.getParagraphs().get(0);
        if (bold) {
            DocxText.addBold(paragraph, style, text);
        } else {
            DocxText.add(paragraph, style, text);
        }
    }

    private static int[] widths(ColumnWidths columns, int text) {
        return Arrays.stream(columns.shares((double) text / POINT)).mapToInt(s -> (int) (text * s)).toArray();
    }

    private XWPFTable empty(int rows, int[] widths) {
        XWPFTable table = docx.createTable(rows, widths.length);
        CTTbl xml = table.getCTTbl();
        CTTblPr properties = xml.getTblPr();
        properties.unsetTblBorders();
        table.setStyleID("DataTable");
        properties.addNewTblLayout().setType(STTblLayoutType.FIXED);
        table.setWidthType(TableWidthType.DXA);
        table.setWidth(Arrays.stream(widths).sum());
        CTTblGrid grid = xml.getTblGrid() == null ? xml.addNewTblGrid() : xml.getTblGrid();
        while (grid.sizeOfGridColArray() > 0) {
            grid.removeGridCol(0);
        }
        for (int width : widths) {
            grid.addNewGridCol().setW(BigInteger.valueOf(width));
        }
        for (XWPFTableRow row : table.getRows()) {
            row.setCantSplitRow(true);
            for (int i = 0; i < widths.length; i++) {
                row.getCell(i).setWidth(String.valueOf(widths[i]));
            }
        }
        return table;
    }
}
