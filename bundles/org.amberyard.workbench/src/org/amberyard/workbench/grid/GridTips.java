package org.amberyard.workbench.grid;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.workbench.look.Fonts;
import org.amberyard.workbench.look.PlaceTip;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Event;

/** Says what a column holds and what is wrong with a cell when the pointer rests on it. */
final class GridTips {

    /** Stands for the row of headers. */
    private static final int HEADER = -2;

    private final Grid grid;
    private final GridGeometry geometry;
    private final PlaceTip tip;

    GridTips(Grid grid, GridGeometry geometry) {
        this.grid = grid;
        this.geometry = geometry;
        this.tip = new PlaceTip(grid);
    }

    void hook() {
        grid.addListener(SWT.MouseMove, this::moved);
        grid.entry().onChange(this::entryChanged);
    }

    private void moved(Event event) {
        if (grid.entry().isOpen()) {
            tip.at(null, () -> null);
        } else {
            Point place = new Point(geometry.columnAt(event.x), event.y < geometry.headerHeight() ? HEADER : geometry.rowAt(event.y));
            tip.at(place, () -> tipAt(event.x, event.y));
        }
    }

    /** What is being typed must not be covered by what the cell held before. */
    private void entryChanged() {
        if (grid.entry().isOpen()) {
            tip.gone();
        }
    }

    private String tipAt(int x, int y) {
        int column = geometry.columnAt(x);
        if (column < 0) {
            return null;
        }
        if (y < geometry.headerHeight()) {
            return Stream.of(cutHeader(column), grid.model().headerTip(column)).filter(t -> !t.isEmpty()).collect(Collectors.joining("\n"));
        }
        int row = geometry.rowAt(y);
        if (row < 0 || row >= grid.model().rows()) {
            return null;
        }
        String told = grid.model().mark(row, column).map(CellMark::message).orElse(grid.model().tip(row, column));
        String note = grid.model().note(row, column);
        return Stream.of(cutText(row, column), told, note).filter(t -> !t.isEmpty()).distinct().collect(Collectors.joining("\n"));
    }

    /** The whole text of a cell that is too narrow for it. */
    private String cutText(int row, int column) {
        String text = grid.model().text(row, column);
        return measured(gc -> geometry.texts().of(gc, text) > room(column)) ? text : "";
    }

    /** The whole header of a column that is too narrow for its words or their number. */
    private String cutHeader(int column) {
        String header = grid.model().header(column);
        return measured(gc -> {
            List<String> lines = geometry.texts().lines(gc, header, room(column));
            return lines.size() * geometry.textHeight() > geometry.headerHeight()
                    || lines.stream().anyMatch(line -> geometry.texts().of(gc, line) > room(column));
        }) ? header : "";
    }

    private int room(int column) {
        return geometry.width(column) - 2 * GridGeometry.PADDING;
    }

    private boolean measured(Predicate<GC> question) {
        GC gc = new GC(grid);
        gc.setFont(Fonts.TEXT.font());
        boolean answer = question.test(gc);
        gc.dispose();
        return answer;
    }
}
