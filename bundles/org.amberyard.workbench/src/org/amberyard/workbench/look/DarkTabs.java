package org.amberyard.workbench.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabFolderRenderer;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

/**
 * Draws tabs in a dark window: the lines that the platform draws in its own shadows, which are nearly black there, in colours of the
 * palette. The style sheet of the dark window names it for views; in a light window it leaves all to the platform.
 */
public final class DarkTabs extends CTabFolderRenderer {
    private static final int BAR = 3;
    private static final int MARGIN = 4;

    /** Draws the tabs of a folder. */
    public DarkTabs(CTabFolder folder) {
        super(folder);
    }

    @Override
    protected void draw(int part, int state, Rectangle bounds, GC gc) {
        boolean dark = Theme.shown() == Theme.DARK;
        super.draw(part, state, bounds, gc);
        if (dark && part >= 0 && bounds.width > 0) {
            drawTab((state & SWT.SELECTED) != 0, bounds, gc);
        } else if (dark && part == PART_BODY) {
            gc.setForeground(Palette.RULE.color());
            gc.drawRectangle(0, 0, parent.getSize().x - 1, parent.getSize().y - 1);
        }
    }

    private void drawTab(boolean selected, Rectangle bounds, GC gc) {
        gc.setForeground(Palette.RULE.color());
        int right = bounds.x + bounds.width - 1;
        gc.drawLine(right, bounds.y + MARGIN, right, bounds.y + bounds.height - MARGIN);
        if (selected) {
            boolean active = parent.getForeground().equals(Palette.INK.color()) || isInFocus();
            gc.setBackground((active ? Palette.NOTICE : Palette.MUTED).color());
            gc.fillRectangle(bounds.x, parent.getTabPosition() == SWT.TOP ? bounds.y : bounds.y + bounds.height - BAR, bounds.width - 1, BAR);
        }
    }

    private boolean isInFocus() {
        for (var control = parent.getDisplay().getFocusControl(); control != null; control = control.getParent()) {
            if (control == parent) {
                return true;
            }
        }
        return false;
    }
}
