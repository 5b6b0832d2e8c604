package org.amberyard.workbench.grid;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
public final class Messages extends NLS {
    public static String Entry_cellGone;

    static {
        NLS.initializeMessages("org.amberyard.workbench.grid.messages", Messages.class);
    }

    private Messages() {
    }
}
