package org.amberyard.workbench.grid;

import java.util.function.Consumer;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

/** Leads a drag over the cells of a grid, and scrolls as long as the pointer is held past an edge. */
final class EdgeScroll {

    private static final int INTERVAL_MS = 60;

    private final Grid grid;
    private final GridGeometry geometry;
    private final Consumer<Point> dragged;
    private Point pointer;
    private boolean waiting;

    /** @param dragged hears column and row of the cell that the drag has come to */
    EdgeScroll(Grid grid, GridGeometry geometry, Consumer<Point> dragged) {
        this.grid = grid;
        this.geometry = geometry;
        this.dragged = dragged;
    }

    /** The pointer has been dragged to a place. */
    void over(Point place) {
        pointer = place;
        lead();
    }

    /** The button is up. */
    void stop() {
        pointer = null;
    }

    private void lead() {
        Rectangle area = grid.getClientArea();
        boolean past = pointer.y < geometry.headerHeight() || pointer.y >= area.height || pointer.x < geometry.frozenWidth()
                || pointer.x >= area.width;
        int row = row(area);
        int column = column(area);
        if (row >= 0 && column >= 0) {
            if (past) {
                grid.reveal(row, column);
            }
            dragged.accept(new Point(column, row));
        }
        if (past && !waiting) {
            waiting = true;
            grid.getDisplay().timerExec(INTERVAL_MS, this::again);
        }
    }

    private void again() {
        waiting = false;
        if (pointer != null && !grid.isDisposed()) {
            lead();
        }
    }

    private int row(Rectangle area) {
        if (pointer.y < geometry.headerHeight()) {
            return Math.max(0, geometry.topRow() - 1);
        }
        int last = grid.shownRows() - 1;
        return pointer.y >= area.height ? Math.min(last, geometry.topRow() + geometry.visibleRows())
                : Math.min(last, geometry.topRow() + (pointer.y - geometry.headerHeight()) / geometry.rowHeight());
    }

    /** Past the left edge, the next hidden column comes before the ones that stay. */
    private int column(Rectangle area) {
        int frozen = geometry.frozenWidth();
        if (pointer.x >= area.width) {
            return Math.min(grid.model().columns() - 1, geometry.columnAt(area.width - 1) + 1);
        }
        if (pointer.x < frozen && geometry.scrollX() > 0) {
            return Math.max(grid.model().frozenColumns(), geometry.columnAt(frozen) - 1);
        }
        return geometry.columnAt(Math.max(0, pointer.x));
    }
}
