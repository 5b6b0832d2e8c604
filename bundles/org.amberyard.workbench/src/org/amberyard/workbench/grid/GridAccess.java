package org.amberyard.workbench.grid;

import java.util.LinkedHashMap;
import java.util.Map;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.Accessible;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.accessibility.AccessibleTableAdapter;
import org.eclipse.swt.accessibility.AccessibleTableEvent;
import org.eclipse.swt.graphics.Point;

/** Tells screen readers of a grid: a table with a cell in focus, whose cells can be asked for one by one. */
final class GridAccess {

    /** Cells are made as they are asked for; older ones are given up. */
    private static final int MOST_CELLS = 200;

    private final Grid grid;
    private final Map<Point, Accessible> cells = new LinkedHashMap<>();

    GridAccess(Grid grid) {
        this.grid = grid;
    }

    void hook() {
        Accessible table = grid.getAccessible();
        table.addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = words(grid.selection().row(), grid.selection().column());
            }
        });
        table.addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_TABLE;
            }

            @Override
            public void getValue(AccessibleControlEvent event) {
                event.result = words(grid.selection().row(), grid.selection().column());
            }
        });
        table.addAccessibleTableListener(new TableListener());
        grid.selection().onMove(() -> table.setFocus(ACC.CHILDID_SELF));
    }

    /** A cell in words, with what is to be said about it. */
    String words(int row, int column) {
        GridModel model = grid.model();
        if (column >= model.columns()) {
            return "";
        }
        if (row >= model.rows()) {
            return model.header(column);
        }
        String note = model.note(row, column);
        String words = model.words(row, column) + (note.isEmpty() ? "" : ". " + NLS.bind(Messages.Cell_note, note));
        return model.mark(row, column).map(m -> words + ". " + m.message()).orElse(words);
    }

    private Accessible cell(int row, int column) {
        Point place = new Point(column, row);
        Accessible known = cells.get(place);
        if (known == null) {
            if (cells.size() >= MOST_CELLS) {
                cells.remove(cells.keySet().iterator().next()).dispose();
            }
            known = new CellAccess(grid, place).accessible();
            cells.put(place, known);
        }
        return known;
    }

    private final class TableListener extends AccessibleTableAdapter {

        @Override
        public void getRowCount(AccessibleTableEvent event) {
            event.count = grid.shownRows();
        }

        @Override
        public void getColumnCount(AccessibleTableEvent event) {
            event.count = grid.model().columns();
        }

        @Override
        public void getColumnDescription(AccessibleTableEvent event) {
            event.result = grid.model().header(event.column);
        }

        @Override
        public void getCell(AccessibleTableEvent event) {
            boolean within = event.row < grid.shownRows() && event.column < grid.model().columns();
            event.accessible = within ? cell(event.row, event.column) : null;
        }
    }
}
