package org.amberyard.workbench.grid;

import java.util.function.BooleanSupplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;

/** Moves about in a grid with the keys of a spreadsheet. */
final class GridKeys {

    private final Grid grid;
    private final GridGeometry geometry;
    /** Column in which a run of Tab keys began; Enter goes back to it. */
    private int tabColumn = -1;
    private BooleanSupplier lead = () -> false;

    GridKeys(Grid grid, GridGeometry geometry) {
        this.grid = grid;
        this.geometry = geometry;
    }

    void hook() {
        grid.addListener(SWT.Traverse, this::traversed);
        grid.addListener(SWT.KeyDown, this::pressed);
    }

    /** Tab and Enter move within the sheet; Tab leaves it past its last cell, Ctrl+Tab anywhere. */
    private void traversed(Event event) {
        switch (event.detail) {
            case SWT.TRAVERSE_TAB_NEXT -> event.doit = isControl(event) || !moveByTab(1);
            case SWT.TRAVERSE_TAB_PREVIOUS -> event.doit = isControl(event) || !moveByTab(-1);
            case SWT.TRAVERSE_RETURN -> event.doit = false;
            default -> event.doit = event.detail == SWT.TRAVERSE_ESCAPE || event.detail == SWT.TRAVERSE_MNEMONIC
                    || event.detail == SWT.TRAVERSE_PAGE_NEXT || event.detail == SWT.TRAVERSE_PAGE_PREVIOUS;
        }
    }

    private static boolean isControl(Event event) {
        return (event.stateMask & SWT.MOD1) != 0;
    }

    boolean moveByTab(int step) {
        GridSelection selection = grid.selection();
        int columns = Math.max(1, grid.model().columns());
        int place = selection.row() * columns + selection.column() + step;
        if (place < 0 || place >= grid.shownRows() * columns) {
            return false;
        }
        int began = tabColumn < 0 ? selection.column() : tabColumn;
        selection.moveTo(place / columns, place % columns, false);
        tabColumn = began;
        return true;
    }

    void leadBy(BooleanSupplier there) {
        lead = there;
    }

    /** Goes on as Enter does after an entry: down, up, or to where Enter leads from this table. */
    void goOnByEnter(int step) {
        if (step < 0 || !lead.getAsBoolean()) {
            moveByEnter(step);
        }
    }

    private void moveByEnter(int step) {
        int column = tabColumn < 0 ? grid.selection().column() : tabColumn;
        moveTo(grid.selection().row() + step, column, false);
    }

    void moveBy(int rows, int columns, boolean extend) {
        moveTo(grid.selection().row() + rows, grid.selection().column() + columns, extend);
    }

    private void moveTo(int row, int column, boolean extend) {
        tabColumn = -1;
        int lastRow = Math.max(0, grid.shownRows() - 1);
        int lastColumn = Math.max(0, grid.model().columns() - 1);
        grid.selection().moveTo(Math.min(Math.max(0, row), lastRow), Math.min(Math.max(0, column), lastColumn), extend);
    }

    private void pressed(Event event) {
        if (grid.model().columns() == 0 || grid.shownRows() == 0) {
            return;
        }
        if (!moved(event)) {
            edited(event);
        }
    }

    private boolean moved(Event event) {
        if ((event.stateMask & SWT.ALT) != 0 && event.keyCode != SWT.ARROW_DOWN) {
            return false;
        }
        boolean extend = (event.stateMask & SWT.SHIFT) != 0;
        boolean far = isControl(event);
        int rows = grid.shownRows();
        int columns = grid.model().columns();
        switch (event.keyCode) {
            case SWT.ARROW_UP -> moveBy(far ? -rows : -1, 0, extend);
            case SWT.ARROW_DOWN -> {
                if ((event.stateMask & SWT.ALT) != 0) {
                    grid.entry().open(null);
                } else {
                    moveBy(far ? rows : 1, 0, extend);
                }
            }
            case SWT.ARROW_LEFT -> moveBy(0, far ? -columns : -1, extend);
            case SWT.ARROW_RIGHT -> moveBy(0, far ? columns : 1, extend);
            case SWT.HOME -> moveTo(far ? 0 : grid.selection().row(), 0, extend);
            case SWT.END -> moveTo(far ? rows : grid.selection().row(), columns, extend);
            case SWT.PAGE_UP -> {
                return !far && moveByPage(-1, extend);
            }
            case SWT.PAGE_DOWN -> {
                return !far && moveByPage(1, extend);
            }
            case SWT.CR, SWT.KEYPAD_CR -> enter(extend ? -1 : 1);
            default -> {
                return false;
            }
        }
        return true;
    }

    /** Enter opens what cannot be edited, as a double click does. */
    private void enter(int step) {
        int row = grid.selection().row();
        int column = grid.selection().column();
        boolean editable = grid.model().isEditable(row, column);
        if (editable && grid.model().isCompact()) {
            grid.entry().open(null);
        } else if (editable) {
            goOnByEnter(step);
        } else {
            grid.tellOpened(row, column);
        }
    }

    private boolean moveByPage(int pages, boolean extend) {
        moveBy(pages * geometry.visibleRows(), 0, extend);
        return true;
    }

    private void edited(Event event) {
        if (event.keyCode == SWT.F2) {
            grid.entry().open(null);
        } else if (event.keyCode == SWT.DEL) {
            grid.clear();
        } else if (event.keyCode == SWT.BS) {
            grid.entry().open("");
        } else if (event.keyCode == SWT.ESC) {
            grid.giveUpStroke();
            moveBy(0, 0, false);
        } else if (event.character >= ' ' && (event.stateMask & (SWT.MOD1 | SWT.ALT)) == 0) {
            grid.entry().open(String.valueOf(event.character));
        }
    }
}
