package org.amberyard.workbench;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Application_running;
    public static String Menu_file;
    public static String Menu_edit;
    public static String Menu_view;
    public static String Menu_help;
    public static String Window_title;
    public static String Window_titleWithStudy;
    public static String Menu_plan;

    static {
        NLS.initializeMessages("org.amberyard.workbench.messages", Messages.class);
    }

    private Messages() {
    }
}
