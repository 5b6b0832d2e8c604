package org.amberyard.workbench.grid;

import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;

/** Says what a column holds and what is wrong with a cell when the pointer rests on it. */
final class GridTips {

    private final Grid grid;
    private final GridGeometry geometry;

    GridTips(Grid grid, GridGeometry geometry) {
        this.grid = grid;
        this.geometry = geometry;
    }

    void hook() {
        grid.addListener(SWT.MouseMove, this::moved);
        grid.entry().onChange(this::entryChanged);
    }

    private void moved(Event event) {
        show(grid.entry().isOpen() ? null : tipAt(event.x, event.y));
    }

    /** What is being typed must not be covered by what the cell held before. */
    private void entryChanged() {
        if (grid.entry().isOpen()) {
            show(null);
        }
    }

    private void show(String tip) {
        if (!Objects.equals(tip, grid.getToolTipText())) {
            grid.setToolTipText(tip);
        }
    }

    private String tipAt(int x, int y) {
        int column = geometry.columnAt(x);
        if (column < 0) {
            return null;
        }
        if (y < geometry.headerHeight()) {
            return emptyToNull(grid.model().headerTip(column));
        }
        int row = geometry.rowAt(y);
        if (row < 0 || row >= grid.model().rows()) {
            return null;
        }
        String tip = grid.model().mark(row, column).map(CellMark::message).orElse(grid.model().tip(row, column));
        String note = grid.model().note(row, column);
        return emptyToNull(Stream.of(cutText(row, column), tip, note).filter(t -> !t.isEmpty()).distinct()
                .collect(Collectors.joining("\n")));
    }

    /** The whole text of a cell that is too narrow for it. */
    private String cutText(int row, int column) {
        String text = grid.model().text(row, column);
        return text.length() * 5 > geometry.width(column) ? text : "";
    }

    private static String emptyToNull(String text) {
        return text.isEmpty() ? null : text;
    }
}
