package org.amberyard.workbench.grid;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ScrollBar;

/** Scrolls a grid: by whole rows down, by pixels to the right. */
final class GridScrolling {

    private static final int COLUMN_STEP = 40;

    private final Grid grid;
    private final GridGeometry geometry;
    /** A cell was asked for before the grid had a size. */
    private boolean unrevealed;

    GridScrolling(Grid grid, GridGeometry geometry) {
        this.grid = grid;
        this.geometry = geometry;
    }

    void hook() {
        grid.getVerticalBar().addListener(SWT.Selection, this::scrolled);
        grid.getHorizontalBar().addListener(SWT.Selection, this::scrolled);
    }

    private void scrolled(Event event) {
        geometry.scrollTo(grid.getHorizontalBar().getSelection(), grid.getVerticalBar().getSelection());
        grid.entry().place();
        grid.redraw();
    }

    /** Fits the scroll bars to the content. */
    void update() {
        Rectangle area = grid.getClientArea();
        if (area.width == 0 || area.height == 0) {
            return;
        }
        fit(grid.getVerticalBar(), grid.shownRows(), geometry.visibleRows(), 1);
        fit(grid.getHorizontalBar(), geometry.contentWidth(), area.width, COLUMN_STEP);
        geometry.scrollTo(Math.min(geometry.scrollX(), Math.max(0, geometry.contentWidth() - area.width)),
                Math.min(geometry.topRow(), Math.max(0, grid.shownRows() - geometry.visibleRows())));
        grid.getVerticalBar().setSelection(geometry.topRow());
        grid.getHorizontalBar().setSelection(geometry.scrollX());
        if (unrevealed) {
            reveal(grid.selection().row(), grid.selection().column());
        }
    }

    private static void fit(ScrollBar bar, int content, int shown, int step) {
        bar.setVisible(content > shown);
        bar.setMaximum(Math.max(1, content));
        bar.setThumb(Math.max(1, Math.min(content, shown)));
        bar.setIncrement(step);
        bar.setPageIncrement(Math.max(1, shown - 1));
    }

    /** Scrolls as far as it takes to show a cell whole. */
    void reveal(int row, int column) {
        Rectangle area = grid.getClientArea();
        unrevealed = area.width == 0;
        if (unrevealed || column >= grid.model().columns()) {
            return;
        }
        int topRow = Math.max(Math.min(geometry.topRow(), row), row - geometry.visibleRows() + 1);
        geometry.scrollTo(revealedX(area, column), topRow);
        grid.getVerticalBar().setSelection(geometry.topRow());
        grid.getHorizontalBar().setSelection(geometry.scrollX());
        grid.entry().place();
    }

    private int revealedX(Rectangle area, int column) {
        int x = geometry.scrollX();
        if (column >= grid.model().frozenColumns()) {
            int left = geometry.x(column);
            int right = left + geometry.width(column);
            if (right > area.width) {
                x += right - area.width;
                left -= right - area.width;
            }
            if (left < geometry.frozenWidth()) {
                x -= geometry.frozenWidth() - left;
            }
        }
        return x;
    }
}
