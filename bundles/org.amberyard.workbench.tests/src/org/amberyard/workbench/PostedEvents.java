package org.amberyard.workbench;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/** Hands events to the window system, by way of which they come back like those of a real keyboard or mouse. */
final class PostedEvents {

    /** Longest wait for an event; one that changes nothing, such as a move to where the pointer is, never comes back. */
    private static final long TIMEOUT_MS = 2_000;

    /** A key always comes back, on a busy machine late. */
    private static final long KEY_TIMEOUT_MS = 10_000;

    private final Display display;

    PostedEvents(Display display) {
        this.display = display;
    }

    /** Posts an event. */
    void post(Event event) {
        display.syncExec(() -> {
            if (!display.post(event)) {
                throw new AssertionError("The display does not take events of keyboard and mouse");
            }
        });
    }

    /** Posts an event, waits until it has come back and the window has acted on it. */
    void postAndAwait(Event event) {
        CountDownLatch come = new CountDownLatch(1);
        Listener listener = e -> come.countDown();
        int type = event.type;
        display.syncExec(() -> display.addFilter(type, listener));
        post(event);
        try {
            come.await(type == SWT.KeyUp ? KEY_TIMEOUT_MS : TIMEOUT_MS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
        display.syncExec(() -> display.removeFilter(type, listener));
    }
}
