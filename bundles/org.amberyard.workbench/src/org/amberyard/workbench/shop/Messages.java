package org.amberyard.workbench.shop;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Sheet_bus;
    public static String Sheet_failed;
    public static String Sheet_fileKind;
    public static String Sheet_noBus;
    public static String Sheet_noPrograms;
    public static String Sheet_plan;
    public static String Sheet_print;
    public static String Sheet_save;
    public static String Sheet_title;
    public static String Sheet_year;

    static {
        NLS.initializeMessages("org.amberyard.workbench.shop.messages", Messages.class);
    }

    private Messages() {
    }
}
