package org.amberyard.workbench.grid;

import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;

/** Tells screen readers the focus cell of a grid: its column, its text and what is wrong with it. */
final class GridAccess {

    private final Grid grid;

    private GridAccess(Grid grid) {
        this.grid = grid;
    }

    static GridAccess of(Grid grid) {
        return new GridAccess(grid);
    }

    void hook() {
        grid.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = cellInWords();
            }
        });
        grid.getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_TABLE;
            }

            @Override
            public void getValue(AccessibleControlEvent event) {
                event.result = cellInWords();
            }
        });
        grid.selection().onMove(() -> grid.getAccessible().setFocus(ACC.CHILDID_SELF));
    }

    String cellInWords() {
        GridModel model = grid.model();
        int row = grid.selection().row();
        int column = grid.selection().column();
        if (column >= model.columns()) {
            return "";
        }
        if (row >= model.rows()) {
            return model.header(column);
        }
        String words = model.header(column) + ": " + model.text(row, column);
        return model.mark(row, column).map(m -> words + ". " + m.message()).orElse(words);
    }
}
