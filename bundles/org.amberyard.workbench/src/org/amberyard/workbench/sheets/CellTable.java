package org.amberyard.workbench.sheets;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.exchange.sheet.CellMarks;
import org.amberyard.exchange.sheet.SheetAmendments;
import org.amberyard.exchange.sheet.SheetImport;
import org.amberyard.exchange.sheet.SheetRow;
import org.amberyard.model.study.Study;
import org.amberyard.workbench.look.Palette;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/**
 * The cells of a sheet as they are to be imported; those with problems have a colour, a sign before their text, and say what is wrong, those
 * that were mended have a sign of their own and say what the file has.
 */
final class CellTable {
    private static final String SIGN = "\u26a0 ";
    private static final String MENDED = "\u270e ";
    private static final int WIDTH = 96;
    private static final int NUMBER_WIDTH = 64;

    private final Table table;
    private final CellMending mending;
    private List<SheetRow> rows = List.of();
    private CellMarks marks;
    private SheetImport made;

    /** @param amend hears of the cells and rows that somebody has mended */
    CellTable(Composite parent, Consumer<SheetAmendments> amend) {
        table = new Table(parent, SWT.VIRTUAL | SWT.FULL_SELECTION | SWT.BORDER);
        table.setHeaderVisible(true);
        table.setLinesVisible(true);
        table.addListener(SWT.SetData, e -> fill((TableItem) e.item));
        table.addListener(SWT.MouseMove, this::tip);
        mending = new CellMending(table, place -> rows.get(place), new Amending(amend));
    }

    /** Writes down what is mended. */
    private final class Amending implements CellMending.Mender {
        private final Consumer<SheetAmendments> amend;

        Amending(Consumer<SheetAmendments> amend) {
            this.amend = amend;
        }

        @Override
        public String text(SheetRow row, int place) {
            return CellTable.this.text(row, place);
        }

        @Override
        public boolean canMend(SheetRow row) {
            return row.number() > made.mapping().headerRow();
        }

        @Override
        public boolean isLeftOut(SheetRow row) {
            return made.amended().leftOut().contains(row.number());
        }

        @Override
        public void mend(SheetRow row, int place, String text) {
            amend.accept(made.amended().with(made.sheet(), row.number(), place, text));
        }

        @Override
        public void leaveOut(SheetRow row, boolean out) {
            amend.accept(made.amended().leaving(row.number(), out));
        }

        @Override
        public void restore(SheetRow row) {
            amend.accept(made.amended().restoring(row.number()));
        }
    }

    Control control() {
        return table;
    }

    /** Shows a sheet, with the problems of its import. */
    void show(SheetImport shown, List<ImportProblem> problems, Study study) {
        made = shown;
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
            boolean mended = column > 0 && made.amended().text(row.number(), column - 1).isPresent();
            String text = column == 0 ? number(row) : text(row, column - 1);
            item.setText(column, (wrong ? SIGN : "") + (mended ? MENDED : "") + text);
            item.setBackground(column, wrong ? Palette.ERROR_WASH.color() : mended ? Palette.AMBER_WASH.color() : null);
            item.setForeground(column, isLeftOut(row) ? Palette.FADED.color() : wrong ? Palette.ERROR.color() : null);
        }
    }

    private boolean isLeftOut(SheetRow row) {
        return made.amended().leftOut().contains(row.number());
    }

    private String number(SheetRow row) {
        return isLeftOut(row) ? NLS.bind(Messages.Mend_leftOut, row.number()) : String.valueOf(row.number());
    }

    /** What a cell says as it is to be imported. */
    private String text(SheetRow row, int place) {
        return made.amended().text(row.number(), place).orElse(row.cell(place).text());
    }

    /** The first column of the table stands for the row as a whole. */
    private List<String> messages(SheetRow row, int column) {
        return isLeftOut(row) ? List.of() : marks.at(row.number(), column - 1);
    }

    /** What is wrong with a cell, and what the file has in it where it was mended. */
    private String tip(SheetRow row, int column) {
        Optional<String> mended = column == 0 ? Optional.empty() : made.amended().text(row.number(), column - 1)
                .map(t -> NLS.bind(Messages.Mend_inFile, row.cell(column - 1).text()));
        return Stream.concat(messages(row, column).stream(), mended.stream()).collect(Collectors.joining("\n"));
    }

    private void tip(Event event) {
        Point at = new Point(event.x, event.y);
        TableItem item = table.getItem(at);
        String tip = item == null ? null : IntStream.range(0, table.getColumnCount()).filter(c -> item.getBounds(c).contains(at)).mapToObj(
                c -> tip(rows.get(table.indexOf(item)), c)).filter(t -> !t.isEmpty()).findFirst().orElse(null);
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
        int column = marks.place(problem).orElse(CellMarks.WHOLE_ROW) + 1;
        table.showColumn(table.getColumn(column));
        mending.turnTo(at.getAsInt(), column);
        return true;
    }
}
