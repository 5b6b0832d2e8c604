package org.amberyard.workbench.grid;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
public final class Messages extends NLS {
    public static String Cell_note;
    public static String Entry_cellGone;
    public static String Paste_place;
    public static String Paste_tooLong;
    public static String Paste_tooWide;

    static {
        NLS.initializeMessages("org.amberyard.workbench.grid.messages", Messages.class);
    }

    private Messages() {
    }
}
