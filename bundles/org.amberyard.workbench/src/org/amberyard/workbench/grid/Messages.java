package org.amberyard.workbench.grid;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
public final class Messages extends NLS {
    public static String Cell_note;
    public static String Entry_cellGone;
    public static String Paste_tooLong;
    public static String Paste_tooWide;
    public static String Refused_column;
    public static String Refused_copy;
    public static String Refused_go;
    public static String Refused_line;
    public static String Refused_noneEntered;
    public static String Refused_one;
    public static String Refused_oneEntered;
    public static String Refused_oneLost;
    public static String Refused_row;
    public static String Refused_some;
    public static String Refused_someEntered;
    public static String Refused_someLost;
    public static String Refused_title;
    public static String Refused_typed;
    public static String Refused_undo;
    public static String Refused_why;

    static {
        NLS.initializeMessages("org.amberyard.workbench.grid.messages", Messages.class);
    }

    private Messages() {
    }
}
