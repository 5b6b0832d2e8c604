package org.amberyard.workbench.grid;

/** A typed or pasted text that its cell cannot take; the message is meant for the user. */
public final class CellRefusal extends Exception {
    private static final long serialVersionUID = 1L;

    private final String typed;
    private final int row;
    private final int column;

    /**
     * A refusal.
     *
     * @param typed the text that was refused; of a whole block, which does not fit, blank
     * @param row row of the cell that refused
     * @param column its column
     */
    public CellRefusal(String message, String typed, int row, int column) {
        super(message);
        this.typed = typed;
        this.row = row;
        this.column = column;
    }

    /** The text that was refused. */
    public String typed() {
        return typed;
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
