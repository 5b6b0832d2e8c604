package org.amberyard.workbench.handlers;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Open_title;
    public static String Open_failed;
    public static String Open_fileKind;
    public static String Open_recover;
    public static String Open_recoverUntitled;
    public static String Open_recoverTitle;
    public static String Open_recoverYes;
    public static String Open_recoverNo;
    public static String Undo_nothing;
    public static String Undo_named;
    public static String Redo_nothing;
    public static String Redo_named;
    public static String About_title;
    public static String About_text;
    public static String Keys_title;
    public static String Keys_text;
    public static String Cautions_title;
    public static String Close;
    public static String Export_title;
    public static String Export_message;
    public static String Export_failed;
    public static String Export_nothing;
    public static String Export_done;
    public static String Sheet_nothing;
    public static String Sheet_title;
    public static String Trace_added;
    public static String Import_anyFile;
    public static String Trace_failed;
    public static String Trace_fileKind;
    public static String Import_more;
    public static String Trace_next;
    public static String Trace_offer;
    public static String Import_reading;
    public static String Trace_title;
    public static String Meter_added;
    public static String Meter_failed;
    public static String Meter_fileKind;
    public static String Meter_offer;
    public static String Meter_title;

    public static String Drop_title;
    public static String Drop_unknown;
    public static String Folder_failed;
    public static String Folder_message;
    public static String Folder_title;
    public static String Theme_dark;
    public static String Theme_light;
    public static String Theme_title;

    static {
        NLS.initializeMessages("org.amberyard.workbench.handlers.messages", Messages.class);
    }

    private Messages() {
    }
}
