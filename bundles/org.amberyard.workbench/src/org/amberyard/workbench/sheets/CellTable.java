package org.amberyard.workbench.sheets;

import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.exchange.sheet.CellMarks;
import org.amberyard.exchange.sheet.SheetImport;
import org.amberyard.exchange.sheet.SheetRow;
import org.amberyard.model.study.Study;
import org.amberyard.workbench.look.Palette;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** The cells of a sheet as the file has them; those with problems have a colour, a sign before their text, and say what is wrong. */
final class CellTable {
    private static final String SIGN = "\u26a0 ";
    private static final int WIDTH = 96;
    private static final int NUMBER_WIDTH = 64;

    private final Table table;
    private List<SheetRow> rows = List.of();
    private CellMarks marks;

    CellTable(Composite parent) {
        table = new Table(parent, SWT.VIRTUAL | SWT.FULL_SELECTION | SWT.BORDER);
        table.setHeaderVisible(true);
        table.setLinesVisible(true);
        table.addListener(SWT.SetData, e -> fill((TableItem) e.item));
        table.addListener(SWT.MouseMove, this::tip);
    }

    Control control() {
        return table;
    }

    /** Shows a sheet, with the problems of its import. */
    void show(SheetImport made, List<ImportProblem> problems, Study study) {
        boolean another = rows != made.sheet().rows();
        rows = made.sheet().rows();
        marks = new CellMarks(made, problems, study);
        if (another) {
            heads();
        }
        title(made.mapping().headerRow());
        table.setItemCount(rows.size());
        table.clearAll();
    }

    /** Columns are made anew for each sheet: the numbers of the rows, and one for each of the sheet. */
    private void heads() {
        for (TableColumn old : table.getColumns()) {
            old.dispose();
        }
        int width = rows.stream().mapToInt(r -> r.cells().size()).max().orElse(0);
        for (int place = CellMarks.WHOLE_ROW; place < width; place++) {
            TableColumn column = new TableColumn(table, SWT.LEFT);
            column.setText(place < 0 ? Messages.Table_row : "");
            column.setWidth(place < 0 ? NUMBER_WIDTH : WIDTH);
        }
    }

    private void title(int headerRow) {
        SheetRow heads = rows.stream().filter(r -> r.number() == headerRow).findFirst().orElse(rows.get(0));
        for (int column = 1; column < table.getColumnCount(); column++) {
            table.getColumn(column).setText(heads.cell(column - 1).text());
        }
    }

    private void fill(TableItem item) {
        SheetRow row = rows.get(table.indexOf(item));
        for (int column = 0; column < table.getColumnCount(); column++) {
            boolean wrong = !messages(row, column).isEmpty();
            String text = column == 0 ? String.valueOf(row.number()) : row.cell(column - 1).text();
            item.setText(column, wrong ? SIGN + text : text);
            item.setBackground(column, wrong ? Palette.ERROR_WASH.color() : null);
            item.setForeground(column, wrong ? Palette.ERROR.color() : null);
        }
    }

    /** The first column of the table stands for the row as a whole. */
    private List<String> messages(SheetRow row, int column) {
        return marks.at(row.number(), column - 1);
    }

    private void tip(Event event) {
        Point at = new Point(event.x, event.y);
        TableItem item = table.getItem(at);
        String tip = item == null ? null : IntStream.range(0, table.getColumnCount()).filter(c -> item.getBounds(c).contains(at)).mapToObj(
                c -> String.join("\n", messages(rows.get(table.indexOf(item)), c))).filter(t -> !t.isEmpty()).findFirst().orElse(null);
        if (!Objects.equals(tip, table.getToolTipText())) {
            table.setToolTipText(tip);
        }
    }

    /** Brings the cell of a problem into sight; false where it lies in no row. */
    boolean reveal(ImportProblem problem) {
        OptionalInt at = IntStream.range(0, rows.size()).filter(i -> rows.get(i).number() == problem.row()).findFirst();
        if (at.isEmpty()) {
            return false;
        }
        table.setSelection(at.getAsInt());
        table.showColumn(table.getColumn(marks.place(problem).orElse(CellMarks.WHOLE_ROW) + 1));
        return true;
    }
}
