package org.amberyard.workbench.grid;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Event;

/** Selects cells, drags column borders, sorts by header and opens entries with the mouse. */
final class GridMouse {

    private final Grid grid;
    private final GridGeometry geometry;
    private int draggedBorder = -1;
    private boolean selecting;

    GridMouse(Grid grid, GridGeometry geometry) {
        this.grid = grid;
        this.geometry = geometry;
    }

    void hook() {
        grid.addListener(SWT.MouseDown, this::pressed);
        grid.addListener(SWT.MouseMove, this::moved);
        grid.addListener(SWT.MouseUp, this::released);
        grid.addListener(SWT.MouseDoubleClick, this::doubleClicked);
    }

    private void pressed(Event event) {
        if (!grid.entry().close()) {
            return;
        }
        grid.setFocus();
        draggedBorder = event.button == 1 ? geometry.borderAt(new Point(event.x, event.y)) : -1;
        int row = geometry.rowAt(event.y);
        int column = geometry.columnAt(event.x);
        if (draggedBorder >= 0 || row < 0 || column < 0) {
            return;
        }
        boolean keepBlock = event.button != 1 && grid.selection().range().contains(row, column);
        if (!keepBlock) {
            grid.selection().moveTo(row, column, (event.stateMask & SWT.SHIFT) != 0);
        }
        selecting = event.button == 1;
    }

    private void moved(Event event) {
        if (draggedBorder >= 0) {
            geometry.setWidth(draggedBorder, event.x - geometry.x(draggedBorder));
            grid.refresh();
            return;
        }
        if (selecting) {
            int row = geometry.rowAt(event.y);
            int column = geometry.columnAt(event.x);
            boolean elsewhere = row != grid.selection().row() || column != grid.selection().column();
            if (row >= 0 && column >= 0 && elsewhere) {
                grid.selection().moveTo(row, column, true);
            }
            return;
        }
        boolean onBorder = geometry.borderAt(new Point(event.x, event.y)) >= 0;
        grid.setCursor(onBorder ? grid.getDisplay().getSystemCursor(SWT.CURSOR_SIZEWE) : null);
    }

    private void released(Event event) {
        boolean clickedHeader = draggedBorder < 0 && !selecting && event.button == 1
                && event.y < geometry.headerHeight();
        if (clickedHeader && geometry.columnAt(event.x) >= 0) {
            grid.toggleSort(geometry.columnAt(event.x));
        }
        draggedBorder = -1;
        selecting = false;
    }

    private void doubleClicked(Event event) {
        int row = geometry.rowAt(event.y);
        int column = geometry.columnAt(event.x);
        if (event.button != 1 || row < 0 || column < 0) {
            return;
        }
        if (grid.model().isEditable(row, column)) {
            grid.entry().open(null);
        } else {
            grid.tellOpened(row, column);
        }
    }
}
