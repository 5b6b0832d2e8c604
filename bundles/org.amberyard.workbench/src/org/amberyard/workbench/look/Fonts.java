package org.amberyard.workbench.look;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;

/** Fonts of the window, all derived from the one that the user's desktop sets. */
public enum Fonts {
    /** Text of forms and cells. */
    TEXT(0, SWT.NORMAL),
    /** Headers and labels of weight. */
    STRONG(0, SWT.BOLD),
    /** Units, hints and captions. */
    SMALL(-1, SWT.NORMAL),
    /** Titles of sections. */
    TITLE(1, SWT.BOLD);

    private final int heightDelta;
    private final int style;

    Fonts(int heightDelta, int style) {
        this.heightDelta = heightDelta;
        this.style = style;
    }

    /** The font; it lives as long as the display. */
    public Font font() {
        FontDescriptor descriptor = JFaceResources.getDialogFontDescriptor().increaseHeight(heightDelta).setStyle(style);
        return JFaceResources.getResources().create(descriptor);
    }
}
