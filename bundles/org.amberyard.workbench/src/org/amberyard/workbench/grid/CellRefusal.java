package org.amberyard.workbench.grid;

/** A typed or pasted text that its cell cannot take; the message is meant for the user. */
public final class CellRefusal extends Exception {
    private static final long serialVersionUID = 1L;

    private final int row;
    private final int column;

    /**
     * A refusal.
     *
     * @param row row of the cell that refused
     * @param column its column
     */
    public CellRefusal(String message, int row, int column) {
        super(message);
        this.row = row;
        this.column = column;
    }

    /** Row of the cell that refused. */
    public int row() {
        return row;
    }

    /** Column of the cell that refused. */
    public int column() {
        return column;
    }
}
