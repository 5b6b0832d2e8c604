package org.amberyard.workbench.documents;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Documents_agency;
    public static String Documents_dated;
    public static String Documents_done;
    public static String Documents_down;
    public static String Documents_failed;
    public static String Documents_folder;
    public static String Documents_formats;
    public static String Documents_freeze;
    public static String Documents_freeze_tip;
    public static String Documents_frozen;
    public static String Documents_placeholders;
    public static String Documents_whatIfLeft;
    public static String Documents_hint;
    public static String Documents_kinds;
    public static String Documents_largest;
    public static String Documents_message;
    public static String Documents_nothing;
    public static String Documents_paper;
    public static String Documents_plan;
    public static String Documents_programme;
    public static String Documents_stopped;
    public static String Documents_tables;
    public static String Documents_title;
    public static String Documents_tooltip;
    public static String Documents_up;
    public static String Documents_working;
    public static String Documents_write;
    public static String Submission_compare;
    public static String Submission_failed;
    public static String Submission_noSum;
    public static String Submission_sum;
    public static String Submission_title;
    public static String Submission_working;
    public static String Documents_doneOne;

    static {
        NLS.initializeMessages("org.amberyard.workbench.documents.messages", Messages.class);
    }

    private Messages() {
    }
}
