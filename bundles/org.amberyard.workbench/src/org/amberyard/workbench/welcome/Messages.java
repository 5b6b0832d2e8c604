package org.amberyard.workbench.welcome;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Welcome_example;
    public static String Welcome_exampleMeaning;
    public static String Welcome_folder;
    public static String Welcome_folderMeaning;
    public static String Welcome_name;
    public static String Welcome_new;
    public static String Welcome_newMeaning;
    public static String Welcome_noRecent;
    public static String Welcome_open;
    public static String Welcome_openMeaning;
    public static String Welcome_question;
    public static String Welcome_recent;
    public static String Welcome_title;

    static {
        NLS.initializeMessages("org.amberyard.workbench.welcome.messages", Messages.class);
    }

    private Messages() {
    }
}
