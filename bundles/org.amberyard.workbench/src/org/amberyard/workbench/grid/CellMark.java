package org.amberyard.workbench.grid;

/**
 * Something to be said about a cell.
 *
 * @param level how grave it is
 * @param message what it is, for the tooltip
 */
public record CellMark(Level level, String message) {

    /** Grades, gravest first. */
    public enum Level {
        ERROR, WARNING, NOTICE
    }
}
