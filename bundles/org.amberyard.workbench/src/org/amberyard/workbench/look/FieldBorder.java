package org.amberyard.workbench.look;

import java.util.function.BooleanSupplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

/** A line around a field, in a colour of the palette: the platform's own is hardly seen in a dark window. */
public final class FieldBorder {
    private FieldBorder() {
    }

    /** Draws it on what holds a field without a border, which leaves a pixel for it at each side. */
    public static void around(Control field) {
        around(field, () -> true);
    }

    /** The same for a field that has a border of the platform, which is seen well in a light window. */
    public static void inDark(Control field) {
        around(field, () -> Theme.shown() == Theme.DARK);
    }

    private static void around(Control field, BooleanSupplier wanted) {
        field.getParent().addListener(SWT.Paint, e -> {
            if (wanted.getAsBoolean()) {
                paint(field, e);
            }
        });
        field.addListener(SWT.FocusIn, e -> field.getParent().redraw());
        field.addListener(SWT.FocusOut, e -> field.getParent().redraw());
    }

    private static void paint(Control field, Event event) {
        Rectangle bounds = field.getBounds();
        event.gc.setForeground((field.isFocusControl() ? Palette.AMBER : Palette.RULE).color());
        event.gc.drawRectangle(bounds.x - 1, bounds.y - 1, bounds.width + 1, bounds.height + 1);
    }
}
