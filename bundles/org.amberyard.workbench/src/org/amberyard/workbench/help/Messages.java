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
    public static String Keys_close;
    public static String Keys_edit;
    public static String Keys_file;
    public static String Keys_help;
    public static String Keys_key;
    public static String Keys_look;
    public static String Keys_none;
    public static String Keys_or;
    public static String Keys_search;
    public static String Keys_title;
    public static String Keys_views;
    public static String Keys_what;
    public static String Keys_within;
    public static String Money;
    public static String Nothing_found;
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
