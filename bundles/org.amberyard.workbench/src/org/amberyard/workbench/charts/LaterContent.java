package org.amberyard.workbench.charts;

import java.util.function.Function;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.work.Owner;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/**
 * A place in a view whose content is made in an event of its own: a layout that is shown for the first time makes its views one after the
 * other, and the window answers in between.
 */
final class LaterContent {
    private final Composite area;
    private Control focus;

    /**
     * A place.
     *
     * @param content makes the content in the place and answers what has the focus of the view
     */
    LaterContent(Composite parent, Function<Composite, Control> content) {
        area = new Composite(parent, SWT.NONE);
        area.setBackground(Palette.PAPER.color());
        focus = area;
        new Owner(area).tell(() -> {
            boolean inFocus = area.isFocusControl();
            focus = content.apply(area);
            area.layout(true, true);
            if (inFocus) {
                setFocus();
            }
        });
    }

    /** Puts the focus on the content, or on what there will be. */
    void setFocus() {
        focus.setFocus();
    }
}
