package org.amberyard.workbench.work;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Work_again;
    public static String Work_running;
    public static String Work_stop;
    public static String Work_stopped;

    static {
        NLS.initializeMessages("org.amberyard.workbench.work.messages", Messages.class);
    }

    private Messages() {
    }
}
