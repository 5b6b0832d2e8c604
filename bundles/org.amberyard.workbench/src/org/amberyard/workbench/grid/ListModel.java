package org.amberyard.workbench.grid;

import java.util.List;

/**
 * A list that is only read: a line for each of some things, under headers that stay the same. The last column takes the room that is left.
 *
 * @param <T> what a line is of
 */
public abstract class ListModel<T> implements GridModel {

    private final List<String> headers;
    private final List<T> lines;

    /** A line for each of some things, in their order. */
    protected ListModel(List<String> headers, List<T> lines) {
        this.headers = headers;
        this.lines = lines;
    }

    /** What stands in the lines. */
    protected final List<T> lines() {
        return lines;
    }

    /** What a line is of. */
    protected final T line(int row) {
        return lines.get(row);
    }

    @Override
    public int rows() {
        return lines.size();
    }

    @Override
    public final int columns() {
        return headers.size();
    }

    @Override
    public final String header(int column) {
        return headers.get(column);
    }

    @Override
    public final boolean stretchesLast() {
        return true;
    }
}
