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
    private static final int SIGN = 10;

    /** Draws the tabs of a folder. */
    public DarkTabs(CTabFolder folder) {
        super(folder);
        // The style sheet names it to folders that have their buttons already.
        folder.getDisplay().asyncExec(() -> {
            if (!folder.isDisposed()) {
                refresh(folder);
            }
        });
    }

    @Override
    protected void draw(int part, int state, Rectangle bounds, GC gc) {
        boolean dark = Theme.shown() == Theme.DARK;
        if (dark && (part == PART_MIN_BUTTON || part == PART_MAX_BUTTON)) {
            drawButton(part == PART_MIN_BUTTON, part == PART_MIN_BUTTON ? parent.getMinimized() : parent.getMaximized(), bounds, gc);
            return;
        }
        super.draw(part, state, bounds, gc);
        if (dark && part >= 0 && bounds.width > 0) {
            drawTab((state & SWT.SELECTED) != 0, bounds, gc);
        } else if (dark && part == PART_BODY) {
            gc.setForeground(Palette.RULE.color());
            gc.drawRectangle(0, 0, parent.getSize().x - 1, parent.getSize().y - 1);
        }
    }

    /** A bar to minimise, a frame to maximise, two frames to bring back. */
    private static void drawButton(boolean minimise, boolean back, Rectangle bounds, GC gc) {
        int x = bounds.x + (bounds.width - SIGN) / 2;
        int y = bounds.y + (bounds.height - SIGN) / 2;
        gc.setForeground(Palette.INK.color());
        gc.setBackground(Palette.INK.color());
        if (back) {
            gc.drawRectangle(x + 2, y, SIGN - 3, SIGN - 4);
            gc.drawRectangle(x, y + 3, SIGN - 3, SIGN - 4);
        } else if (minimise) {
            gc.fillRectangle(x, y + SIGN - 3, SIGN, 2);
        } else {
            gc.drawRectangle(x, y, SIGN - 1, SIGN - 1);
            gc.drawLine(x, y + 1, x + SIGN - 1, y + 1);
        }
    }

    /** Makes the signs of a folder's buttons anew, which it keeps as it has drawn them first. */
    static void refresh(CTabFolder folder) {
        boolean maximised = folder.getMaximized();
        boolean minimised = folder.getMinimized();
        folder.setMinimized(!minimised);
        folder.setMinimized(minimised);
        folder.setMaximized(!maximised);
        folder.setMaximized(maximised);
        // Each of the two takes the other back.
        folder.setMinimized(minimised);
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
