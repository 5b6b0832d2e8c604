package org.amberyard.workbench.look;

import java.util.function.IntConsumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

/** Alt with an arrow moves the row that is selected in a list. */
public final class MoveKeys {
    private MoveKeys() {
    }

    /** @param move hears by how many rows, -1 upward and 1 downward */
    public static void listen(Control list, IntConsumer move) {
        list.addListener(SWT.KeyDown, e -> pressed(e, move));
    }

    private static void pressed(Event event, IntConsumer move) {
        if (event.stateMask == SWT.ALT && (event.keyCode == SWT.ARROW_UP || event.keyCode == SWT.ARROW_DOWN)) {
            move.accept(event.keyCode == SWT.ARROW_UP ? -1 : 1);
            event.doit = false;
        }
    }
}
