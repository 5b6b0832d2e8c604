package org.amberyard.workbench.grid;

import org.eclipse.swt.SWT;

/** Takes strokes of the mouse over cells in place of the selection. */
public interface GridTool {

    /** Leaves all strokes to the selection. */
    GridTool SELECTION = new GridTool() {
    };

    /**
     * A press of the first mouse button on a cell, before the selection goes there.
     *
     * @param more true when Ctrl is held
     * @return true to take the stroke; false leaves it to the selection
     */
    default boolean press(int row, int column, boolean more) {
        return false;
    }

    /** The pointer has come to a cell. */
    default void drag(int row, int column) {
        // a tool that takes no strokes
    }

    /** The button is up: what the stroke does is done. */
    default void release() {
        // a tool that takes no strokes
    }

    /** The stroke is given up and does nothing. */
    default void cancel() {
        // a tool that takes no strokes
    }

    /** True while a press paints cells; a double click then opens none. */
    default boolean isPainting() {
        return false;
    }

    /** Cursor over a cell, one of those of {@link SWT}. */
    default int cursor(int row, int column) {
        return SWT.CURSOR_ARROW;
    }
}
