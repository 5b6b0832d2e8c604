package org.amberyard.workbench.grid;

import java.util.ArrayList;
import java.util.List;

/** The focus cell of a grid and the block that reaches from it to the anchor cell. */
public final class GridSelection {

    private final List<Runnable> listeners = new ArrayList<>();
    private int anchorRow;
    private int anchorColumn;
    private int row;
    private int column;
    private boolean chosen;

    /** Row of the focus cell. */
    public int row() {
        return row;
    }

    /** Column of the focus cell. */
    public int column() {
        return column;
    }

    /** The selected block. */
    public CellRange range() {
        return CellRange.between(anchorRow, anchorColumn, row, column);
    }

    /** Calls the listener after every move. */
    public void onMove(Runnable listener) {
        listeners.add(listener);
    }

    /** True when somebody has gone to a cell of the table; false as long as it begins with its first. */
    boolean isChosen() {
        return chosen;
    }

    /** Goes to the first row, as nobody has chosen another. */
    void begin(int toColumn) {
        moveTo(0, toColumn, false);
        chosen = false;
    }

    void moveTo(int toRow, int toColumn, boolean extend) {
        chosen = true;
        row = Math.max(0, toRow);
        column = Math.max(0, toColumn);
        if (!extend) {
            anchorRow = row;
            anchorColumn = column;
        }
        listeners.forEach(Runnable::run);
    }

    /** Selects a block; the focus goes to its first cell. */
    public void select(CellRange range) {
        chosen = true;
        anchorRow = range.bottom();
        anchorColumn = range.right();
        row = range.top();
        column = range.left();
        listeners.forEach(Runnable::run);
    }

    /** Pulls the selection back into a table that has become smaller. */
    void keepWithin(int rows, int columns) {
        boolean inside = row < rows && anchorRow < rows && column < columns && anchorColumn < columns;
        if (!inside) {
            boolean before = chosen;
            moveTo(Math.min(row, rows - 1), Math.min(column, columns - 1), false);
            chosen = before;
        }
    }
}
