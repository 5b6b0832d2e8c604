package org.amberyard.workbench.narrative;

import org.amberyard.workbench.look.FieldBorder;
import org.amberyard.workbench.look.Palette;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;

/** A field of several lines for a narrative. */
final class NarrativeField {
    private static final int MARGIN = 6;

    private NarrativeField() {
    }

    /** Makes it. Tab goes on to the next control, as in a form; a narrative has no tabs. */
    static StyledText of(Composite parent, int more, Palette background) {
        StyledText text = new StyledText(parent, SWT.MULTI | SWT.WRAP | SWT.V_SCROLL | more);
        FieldBorder.around(text);
        text.setMargins(MARGIN, MARGIN, MARGIN, MARGIN);
        text.setBackground(background.color());
        text.setForeground(Palette.INK.color());
        text.addListener(SWT.Traverse, e -> e.doit = e.detail == SWT.TRAVERSE_TAB_NEXT || e.detail == SWT.TRAVERSE_TAB_PREVIOUS || e.doit);
        return text;
    }
}
