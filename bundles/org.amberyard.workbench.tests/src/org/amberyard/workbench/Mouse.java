package org.amberyard.workbench;

import org.amberyard.workbench.grid.Grid;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;

/**
 * Moves and presses a mouse over the cells of a grid, with the events that the window system would send: those that SWT itself
 * can post have the place of the pointer wrong.
 */
final class Mouse {

    private final Display display;
    private final Grid grid;
    private int row;
    private int column;

    Mouse(Display display, Grid grid) {
        this.display = display;
        this.grid = grid;
    }

    /** Clicks a cell. */
    void click(int atRow, int atColumn) {
        press(atRow, atColumn);
        release();
    }

    /** Presses in a cell, drags to another and lets go there. */
    void drag(int fromRow, int fromColumn, int toRow, int toColumn) {
        press(fromRow, fromColumn);
        dragTo(toRow, toColumn);
        release();
    }

    /** Presses in a cell. */
    void press(int atRow, int atColumn) {
        row = atRow;
        column = atColumn;
        send(SWT.MouseMove, 0);
        send(SWT.MouseDown, 1);
    }

    /** Drags from the cell where the pointer is to another, without letting go. */
    void dragTo(int toRow, int toColumn) {
        while (row != toRow || column != toColumn) {
            row += Integer.signum(toRow - row);
            column += Integer.signum(toColumn - column);
            send(SWT.MouseMove, 0);
        }
    }

    /** Lets go. */
    void release() {
        send(SWT.MouseUp, 1);
    }

    private void send(int type, int button) {
        display.syncExec(() -> {
            Rectangle cell = grid.cellBounds(row, column);
            Event event = new Event();
            event.button = button;
            event.x = cell.x + cell.width / 2;
            event.y = cell.y + cell.height / 2;
            grid.notifyListeners(type, event);
        });
    }
}
