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

    void moveTo(int toRow, int toColumn, boolean extend) {
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
            moveTo(Math.min(row, rows - 1), Math.min(column, columns - 1), false);
        }
    }
}
