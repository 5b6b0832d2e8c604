package org.amberyard.workbench;

import org.amberyard.workbench.grid.Grid;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;

/** Moves and presses a real mouse over the cells of a grid. */
final class Mouse {

    private static final int STEPS = 4;

    private final Display display;
    private final Grid grid;

    Mouse(Display display, Grid grid) {
        this.display = display;
        this.grid = grid;
    }

    /** Clicks a cell. */
    void click(int row, int column) {
        move(centre(row, column));
        button(SWT.MouseDown);
        button(SWT.MouseUp);
    }

    /** Presses in a cell, drags to another and lets go there. */
    void drag(int row, int column, int toRow, int toColumn) {
        press(row, column);
        dragTo(row, column, toRow, toColumn);
        button(SWT.MouseUp);
    }

    /** Presses in a cell. */
    void press(int row, int column) {
        move(centre(row, column));
        button(SWT.MouseDown);
    }

    /** Drags from a cell to another without letting go. */
    void dragTo(int row, int column, int toRow, int toColumn) {
        Point from = centre(row, column);
        Point to = centre(toRow, toColumn);
        for (int i = 1; i <= STEPS; i++) {
            move(new Point(from.x + (to.x - from.x) * i / STEPS, from.y + (to.y - from.y) * i / STEPS));
        }
    }

    /** Lets go. */
    void release() {
        button(SWT.MouseUp);
    }

    private Point centre(int row, int column) {
        return display.syncCall(() -> {
            Rectangle cell = grid.cellBounds(row, column);
            return grid.toDisplay(cell.x + cell.width / 2, cell.y + cell.height / 2);
        });
    }

    private void move(Point place) {
        Event event = new Event();
        event.type = SWT.MouseMove;
        event.x = place.x;
        event.y = place.y;
        post(event);
    }

    private void button(int type) {
        Event event = new Event();
        event.type = type;
        event.button = 1;
        post(event);
    }

    /** The event goes by way of the window system; give it time to come back, and the window to act on it. */
    private void post(Event event) {
        display.syncExec(() -> {
            if (!display.post(event)) {
                throw new AssertionError("The display does not take mouse events");
            }
        });
        OpenStudy.pause(30);
        display.syncExec(() -> { });
    }
}
