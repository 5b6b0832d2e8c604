package org.amberyard.workbench.grid;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Event;

/** Selects cells, drags column borders, sorts by header and opens entries with the mouse. */
final class GridMouse {

    private final Grid grid;
    private final GridGeometry geometry;
    private final EdgeScroll edge;
    private int draggedBorder = -1;
    private int pressedHeader = -1;
    private boolean selecting;
    private boolean stroking;
    private GridTool tool = GridTool.SELECTION;

    GridMouse(Grid grid, GridGeometry geometry) {
        this.grid = grid;
        this.geometry = geometry;
        this.edge = new EdgeScroll(grid, geometry, this::dragged);
    }

    void setTool(GridTool tool) {
        giveUpStroke();
        this.tool = tool;
    }

    void giveUpStroke() {
        if (stroking) {
            stroking = false;
            edge.stop();
            tool.cancel();
        }
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
        boolean onHeader = event.button == 1 && draggedBorder < 0 && event.y < geometry.headerHeight();
        pressedHeader = onHeader ? column : -1;
        if (draggedBorder >= 0 || row < 0 || column < 0) {
            return;
        }
        boolean inBlock = grid.selection().range().contains(row, column);
        boolean extend = (event.stateMask & SWT.SHIFT) != 0;
        stroking = event.button == 1 && !extend && tool.press(row, column, (event.stateMask & SWT.MOD1) != 0);
        boolean keepBlock = inBlock && (event.button != 1 || stroking && !tool.isPainting());
        if (!keepBlock) {
            grid.selection().moveTo(row, column, extend);
        }
        selecting = event.button == 1 && !stroking;
    }

    private void moved(Event event) {
        if (draggedBorder >= 0) {
            geometry.setWidth(draggedBorder, event.x - geometry.x(draggedBorder));
            grid.refresh();
            return;
        }
        if (stroking || selecting) {
            edge.over(new Point(event.x, event.y));
            return;
        }
        int row = geometry.rowAt(event.y);
        int column = geometry.columnAt(event.x);
        boolean onBorder = geometry.borderAt(new Point(event.x, event.y)) >= 0;
        int cursor = onBorder ? SWT.CURSOR_SIZEWE : row >= 0 && column >= 0 ? tool.cursor(row, column) : SWT.CURSOR_ARROW;
        grid.setCursor(grid.getDisplay().getSystemCursor(cursor));
    }

    private void dragged(Point cell) {
        if (stroking) {
            tool.drag(cell.y, cell.x);
        } else if (cell.y != grid.selection().row() || cell.x != grid.selection().column()) {
            grid.selection().moveTo(cell.y, cell.x, true);
        }
    }

    private void released(Event event) {
        edge.stop();
        if (stroking) {
            stroking = false;
            tool.release();
            return;
        }
        int header = grid.headerAt(new Point(event.x, event.y));
        if (pressedHeader >= 0 && header == pressedHeader) {
            grid.toggleSort(header);
        } else if (pressedHeader >= 0 && header >= 0) {
            grid.tellHeaderDragged(pressedHeader, header);
        }
        pressedHeader = -1;
        draggedBorder = -1;
        selecting = false;
    }

    private void doubleClicked(Event event) {
        int row = geometry.rowAt(event.y);
        int column = geometry.columnAt(event.x);
        if (event.button != 1 || row < 0 || column < 0 || tool.isPainting()) {
            return;
        }
        if (grid.model().isEditable(row, column)) {
            grid.entry().open(null);
        } else {
            grid.tellOpened(row, column);
        }
    }
}
