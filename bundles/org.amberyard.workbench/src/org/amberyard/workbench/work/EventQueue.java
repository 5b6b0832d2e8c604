package org.amberyard.workbench.work;

import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.widgets.Display;

/** Runs something on the event thread later, as long as there is one: the display may go at any moment, also just after it was asked. */
public final class EventQueue {
    private final Consumer<Runnable> queue;

    /** That of a display. */
    public EventQueue(Display display) {
        this(display::asyncExec);
    }

    EventQueue(Consumer<Runnable> queue) {
        this.queue = queue;
    }

    /** Runs something later, or never. */
    public void later(Runnable told) {
        try {
            queue.accept(told);
        } catch (SWTException e) {
            if (e.code != SWT.ERROR_DEVICE_DISPOSED) {
                throw e;
            }
        }
    }
}
