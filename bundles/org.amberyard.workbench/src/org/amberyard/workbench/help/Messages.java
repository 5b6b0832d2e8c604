package org.amberyard.workbench.help;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Field_default;
    public static String Field_or;
    public static String Field_range;
    public static String Field_source;
    public static String Field_unit;
    public static String Group_fields;
    public static String Group_how;
    public static String Group_methods;
    public static String Money;
    public static String Search;
    public static String Topic_administrator;
    public static String Topic_cautions;
    public static String Topic_charging;
    public static String Topic_consultant;
    public static String Topic_duty;
    public static String Topic_energy;
    public static String Topic_grants;
    public static String Topic_money;
    public static String Topic_start;

    static {
        NLS.initializeMessages("org.amberyard.workbench.help.messages", Messages.class);
    }

    private Messages() {
    }
}
