package org.amberyard.workbench.roll;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Roll_actual;
    public static String Roll_after;
    public static String Roll_before;
    public static String Roll_changes;
    public static String Roll_difference;
    public static String Roll_element;
    public static String Roll_end;
    public static String Roll_failed;
    public static String Roll_field;
    public static String Roll_figure;
    public static String Roll_goes;
    public static String Roll_late;
    public static String Roll_late_none;
    public static String Roll_late_tip;
    public static String Roll_make;
    public static String Roll_new;
    public static String Roll_plan;
    public static String Roll_planned;
    public static String Roll_proposal;
    public static String Roll_ready;
    public static String Roll_remarks;
    public static String Roll_sameEnd;
    public static String Roll_sameLength;
    public static String Roll_share;
    public static String Roll_take;
    public static String Roll_take_none;
    public static String Roll_take_tip;
    public static String Roll_title;
    public static String Roll_toYear;
    public static String Roll_variance;
    public static String Roll_why;
    public static String Roll_working;
    public static String Roll_year;
    public static String Roll_group;
    public static String Roll_changes_none;
    public static String Roll_remarks_none;
    public static String Roll_variance_none;

    static {
        NLS.initializeMessages("org.amberyard.workbench.roll.messages", Messages.class);
    }

    private Messages() {
    }
}
