package org.amberyard.workbench.grid;

/**
 * A block of cells, both ends included.
 *
 * @param top first row
 * @param left first column
 * @param bottom last row
 * @param right last column
 */
public record CellRange(int top, int left, int bottom, int right) {

    /** The smallest block with two cells in it. */
    static CellRange between(int row, int column, int otherRow, int otherColumn) {
        return new CellRange(Math.min(row, otherRow), Math.min(column, otherColumn), Math.max(row, otherRow),
                Math.max(column, otherColumn));
    }

    /** True when a cell lies in the block. */
    public boolean contains(int row, int column) {
        return row >= top && row <= bottom && column >= left && column <= right;
    }

    /** Number of rows. */
    public int height() {
        return bottom - top + 1;
    }

    /** Number of columns. */
    public int width() {
        return right - left + 1;
    }

    /** True for a single cell. */
    public boolean isSingle() {
        return height() == 1 && width() == 1;
    }
}
