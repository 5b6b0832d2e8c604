package org.amberyard.workbench.columns;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Columns_all;
    public static String Columns_down;
    public static String Columns_freeze;
    public static String Columns_list_tip;
    public static String Columns_reset;
    public static String Columns_title;
    public static String Columns_up;
    public static String Menu_choose;
    public static String Menu_freeze;
    public static String Menu_hide;
    public static String Menu_left;
    public static String Menu_reset;
    public static String Menu_right;

    static {
        NLS.initializeMessages("org.amberyard.workbench.columns.messages", Messages.class);
    }

    private Messages() {
    }
}
