package org.amberyard.workbench.sheets;

import java.util.List;
import java.util.function.IntFunction;
import org.amberyard.exchange.sheet.SheetRow;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.TableCursor;
import org.eclipse.swt.custom.TableEditor;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;

/** Another text is typed into a cell of a sheet, or a row is left out, before it is imported; the file stays as it is. */
final class CellMending {
    private static final int FIRST_PRINTING = ' ';

    private final Table table;
    private final TableCursor cursor;
    private final TableEditor editor;
    private final Mender mender;
    private final IntFunction<SheetRow> rows;
    private Text entry;

    /** Hears of what is mended. */
    interface Mender {
        /** What stands in a cell, as it is to be imported. */
        String text(SheetRow row, int place);

        /** True for a row that can be mended: one below the headers. */
        boolean canMend(SheetRow row);

        /** True for a row that is left out. */
        boolean isLeftOut(SheetRow row);

        /** Another text for a cell. */
        void mend(SheetRow row, int place, String text);

        /** A row is left out, or taken in again. */
        void leaveOut(SheetRow row, boolean out);

        /** All cells of a row are as the file has them again. */
        void restore(SheetRow row);
    }

    /** @param rows the row of the sheet that stands in a row of the table */
    CellMending(Table table, IntFunction<SheetRow> rows, Mender mender) {
        this.table = table;
        this.rows = rows;
        this.mender = mender;
        cursor = new TableCursor(table, SWT.NONE);
        editor = new TableEditor(table);
        editor.grabHorizontal = true;
        editor.grabVertical = true;
        cursor.addListener(SWT.Selection, e -> table.setSelection(table.indexOf(cursor.getRow())));
        cursor.addListener(SWT.DefaultSelection, e -> open(null));
        cursor.addListener(SWT.MouseDoubleClick, e -> open(null));
        cursor.addListener(SWT.KeyDown, this::typed);
        cursor.setMenu(menu());
    }

    /** Goes to a cell. */
    void turnTo(int row, int column) {
        cursor.setSelection(row, column);
        cursor.setVisible(true);
    }

    private Menu menu() {
        Menu menu = new Menu(table.getShell(), SWT.POP_UP);
        MenuItem mend = item(menu, Messages.Mend_cell, () -> open(null));
        MenuItem restore = item(menu, Messages.Mend_restore, () -> mender.restore(row()));
        MenuItem leave = item(menu, Messages.Mend_leaveOut, () -> mender.leaveOut(row(), !mender.isLeftOut(row())));
        menu.addListener(SWT.Show, e -> {
            boolean can = cursor.getRow() != null && mender.canMend(row());
            List.of(mend, restore, leave).forEach(i -> i.setEnabled(can));
            leave.setText(can && mender.isLeftOut(row()) ? Messages.Mend_takeIn : Messages.Mend_leaveOut);
        });
        return menu;
    }

    private static MenuItem item(Menu menu, String text, Runnable action) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(text);
        item.addListener(SWT.Selection, e -> action.run());
        return item;
    }

    private SheetRow row() {
        return rows.apply(table.indexOf(cursor.getRow()));
    }

    private void typed(Event key) {
        if (key.keyCode == SWT.F2) {
            open(null);
        } else if (key.keyCode == SWT.DEL) {
            mend("");
        } else if (key.character >= FIRST_PRINTING && (key.stateMask & (SWT.MOD1 | SWT.MOD3)) == 0) {
            open(String.valueOf(key.character));
        }
    }

    /** Opens an entry over the cell; the first column stands for the row as a whole. */
    private void open(String begun) {
        if (cursor.getRow() == null || cursor.getColumn() == 0 || !mender.canMend(row())) {
            return;
        }
        entry = new Text(table, SWT.BORDER);
        entry.setText(begun == null ? mender.text(row(), cursor.getColumn() - 1) : begun);
        entry.setSelection(begun == null ? 0 : begun.length(), entry.getText().length());
        entry.addListener(SWT.DefaultSelection, e -> close(true));
        entry.addListener(SWT.FocusOut, e -> close(true));
        entry.addListener(SWT.Traverse, e -> {
            if (e.detail == SWT.TRAVERSE_ESCAPE) {
                e.doit = false;
                close(false);
            } else if (e.detail == SWT.TRAVERSE_RETURN) {
                e.doit = false;
            }
        });
        editor.setEditor(entry, cursor.getRow(), cursor.getColumn());
        entry.setFocus();
    }

    private void close(boolean take) {
        Text closing = entry;
        if (closing == null || closing.isDisposed()) {
            return;
        }
        entry = null;
        String text = closing.getText();
        closing.dispose();
        cursor.setFocus();
        if (take) {
            mend(text);
        }
    }

    private void mend(String text) {
        if (cursor.getRow() != null && cursor.getColumn() > 0 && mender.canMend(row())
                && !text.strip().equals(mender.text(row(), cursor.getColumn() - 1))) {
            mender.mend(row(), cursor.getColumn() - 1, text);
        }
    }
}
