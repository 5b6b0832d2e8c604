package org.amberyard.workbench.grid;

import org.amberyard.workbench.look.Fonts;
import org.amberyard.workbench.look.Palette;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Label;

/** Says beside a cell why it does not take what was typed. */
final class RefusalHint {

    private static final int WIDEST = 360;

    private final Grid grid;
    private Label label;

    RefusalHint(Grid grid) {
        this.grid = grid;
    }

    String message() {
        return label == null ? "" : label.getText();
    }

    void show(String message, Rectangle cell) {
        hide();
        label = new Label(grid, SWT.WRAP);
        label.setText(message);
        label.setFont(Fonts.SMALL.font());
        label.setForeground(Palette.ERROR.color());
        label.setBackground(Palette.ERROR_WASH.color());
        place(cell);
        label.moveAbove(null);
    }

    /** Below the cell, or above it near the bottom of the grid. */
    void place(Rectangle cell) {
        if (label == null) {
            return;
        }
        Rectangle area = grid.getClientArea();
        int widest = Math.max(120, Math.min(WIDEST, area.width - 8));
        Point natural = label.computeSize(SWT.DEFAULT, SWT.DEFAULT);
        Point size = natural.x > widest ? label.computeSize(widest, SWT.DEFAULT) : natural;
        int x = Math.max(2, Math.min(cell.x, area.width - size.x - 4));
        int below = cell.y + cell.height + 2;
        int y = below + size.y > area.height ? cell.y - size.y - 2 : below;
        label.setBounds(x, y, size.x, size.y);
    }

    void hide() {
        if (label != null) {
            label.dispose();
            label = null;
        }
    }
}
