package org.amberyard.workbench.grid;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** The rows that are selected in a grid, known by what they stand for, so that they are found again in other places. */
final class SelectedRows {

    private final Grid grid;
    private final CellRange range;
    private final int column;
    private final Optional<Object> focus;
    private final List<Object> block;

    SelectedRows(Grid grid) {
        this.grid = grid;
        range = grid.selection().range();
        column = grid.selection().column();
        focus = subject(grid.selection().row());
        block = IntStream.rangeClosed(range.top(), range.bottom()).boxed().flatMap(row -> subject(row).stream()).toList();
    }

    private Optional<Object> subject(int row) {
        boolean within = row < grid.model().rows() && grid.model().columns() > 0;
        return within ? Optional.ofNullable(grid.model().subject(row, 0)) : Optional.empty();
    }

    /** Selects them where they are now: the block as long as its rows stand below each other, else the row in focus; false where that is gone. */
    boolean selectAgain() {
        Map<Object, Integer> places = new HashMap<>();
        IntStream.range(0, grid.model().rows()).forEach(row -> subject(row).ifPresent(s -> places.putIfAbsent(s, row)));
        Integer row = focus.map(places::get).orElse(null);
        if (row == null) {
            return false;
        }
        List<Integer> rows = block.stream().filter(places::containsKey).map(places::get).sorted().toList();
        int top = rows.get(0);
        boolean together = rows.size() == range.height() && rows.get(rows.size() - 1) == top + rows.size() - 1;
        if (together && !range.isSingle()) {
            grid.selection().select(new CellRange(top, range.left(), top + range.height() - 1, range.right()));
        } else {
            grid.goTo(row, column);
        }
        return true;
    }
}
