package org.amberyard.batch;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

/** Entry point for runs without a window. */
public final class HeadlessApplication implements IApplication {

    private static final Integer WRONG_USE = 2;

    @Override
    public Object start(IApplicationContext context) {
        System.err.println("Usage: amberyard evaluate|check STUDY [OPTION ...]");
        return WRONG_USE;
    }

    @Override
    public void stop() {
        // A run ends by itself; there is nothing to interrupt.
    }
}
