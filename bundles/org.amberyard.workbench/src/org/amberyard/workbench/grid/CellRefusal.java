package org.amberyard.workbench.grid;

/** A typed or pasted text that its cell cannot take; the message is meant for the user. */
public final class CellRefusal extends Exception {
    private static final long serialVersionUID = 1L;
    private static final int NO_LINE = -1;

    private final String typed;
    private final int row;
    private final int column;
    /** Line of a block that has not become a row, or {@link #NO_LINE}. */
    private final int lostLine;

    /**
     * A refusal.
     *
     * @param typed the text that was refused; of a whole block, which does not fit, blank
     * @param row row of the cell that refused
     * @param column its column
     */
    public CellRefusal(String message, String typed, int row, int column) {
        this(message, typed, row, column, NO_LINE);
    }

    private CellRefusal(String message, String typed, int row, int column, int lostLine) {
        super(message);
        this.typed = typed;
        this.row = row;
        this.column = column;
        this.lostLine = lostLine;
    }

    /** The same refusal by the cell of another row. */
    public CellRefusal inRow(int other) {
        return new CellRefusal(getMessage(), typed, other, column, lostLine);
    }

    /** The same refusal by the cell of another column. */
    public CellRefusal inColumn(int other) {
        return new CellRefusal(getMessage(), typed, row, other, lostLine);
    }

    /** The same refusal of a text whose line of the block, counted from 0, has not become a row. */
    public CellRefusal withLine(int line) {
        return new CellRefusal(getMessage(), typed, row, column, line);
    }

    /** The text that was refused. */
    public String typed() {
        return typed;
    }

    /** False when the line of the text has not become a row: then no cell stands for it. */
    public boolean hasRow() {
        return lostLine == NO_LINE;
    }

    /** Line of the block, counted from 0, that has not become a row. */
    int lostLine() {
        return lostLine;
    }

    /** Row of the cell that refused; where its line has not become one, the row that was meant. */
    public int row() {
        return row;
    }

    /** Column of the cell that refused. */
    public int column() {
        return column;
    }
}
