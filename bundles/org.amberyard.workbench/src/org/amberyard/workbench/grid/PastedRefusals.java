package org.amberyard.workbench.grid;

import java.util.List;
import org.eclipse.swt.SWT;

/** Says what a table does not take of what was pasted or filled: of a single text at its cell, of a block in a list. */
final class PastedRefusals {

    private final Grid grid;
    private final GridGeometry geometry;
    private final RefusalHint hint;
    private RefusedDialog dialog;

    PastedRefusals(Grid grid, GridGeometry geometry) {
        this.grid = grid;
        this.geometry = geometry;
        this.hint = new RefusalHint(grid);
    }

    /** What is said at a cell holds until something else is done. */
    void hook() {
        grid.addListener(SWT.KeyDown, e -> hint.hide());
        grid.addListener(SWT.MouseDown, e -> hint.hide());
        grid.addListener(SWT.Dispose, e -> forget());
        grid.selection().onMove(hint::hide);
        grid.getVerticalBar().addListener(SWT.Selection, e -> hint.hide());
        grid.getHorizontalBar().addListener(SWT.Selection, e -> hint.hide());
    }

    /** Why nothing was entered, at the cell. */
    void say(CellRefusal refusal) {
        hint.show(refusal.getMessage(), geometry.cell(refusal.row(), refusal.column()));
    }

    /** What is said at a cell; blank for nothing. */
    String said() {
        return hint.message();
    }

    /** Lists the refused cells of a block with a number of texts, if there are any. */
    void list(List<CellRefusal> refused, int texts) {
        if (!refused.isEmpty()) {
            dialog = new RefusedDialog(grid, refused, texts);
            dialog.open();
        }
    }

    /** What was said of an earlier entry is over. */
    void forget() {
        hint.hide();
        if (dialog != null) {
            dialog.close();
            dialog = null;
        }
    }
}
