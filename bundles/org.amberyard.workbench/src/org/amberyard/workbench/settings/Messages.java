package org.amberyard.workbench.settings;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Colours;
    public static String Colours_strong;
    public static String Colours_usual;
    public static String Currency;
    public static String FiscalYear;
    public static String Kept;
    public static String Kept_seconds;
    public static String Language;
    public static String Language_system;
    public static String Numbers;
    public static String Numbers_system;
    public static String Preferences_newStudies;
    public static String Preferences_ofStudies;
    public static String Preferences_ofStudy;
    public static String Preferences_title;
    public static String Preferences_window;
    public static String Theme;
    public static String Theme_dark;
    public static String Theme_light;
    public static String Theme_system;
    public static String Units;
    public static String Units_metric;
    public static String Units_us;

    static {
        NLS.initializeMessages("org.amberyard.workbench.settings.messages", Messages.class);
    }

    private Messages() {
    }
}
