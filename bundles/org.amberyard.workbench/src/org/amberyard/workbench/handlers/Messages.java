package org.amberyard.workbench.handlers;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Clipboard_empty;
    public static String Clipboard_title;
    public static String CompareSubmission_message;
    public static String CompareSubmission_title;
    public static String Open_recoverFileGone;
    public static String Open_taken;
    public static String Open_takenCopy;
    public static String Open_takenNot;
    public static String Open_takenShare;
    public static String Open_takenTitle;
    public static String NewStudy_job;
    public static String Open_title;
    public static String Open_failed;
    public static String Open_fileKind;
    public static String Open_recover;
    public static String Open_recoverUntitled;
    public static String Open_recoverTitle;
    public static String Open_recoverYes;
    public static String Open_recoverNo;
    public static String Roll_noResults;
    public static String Roll_oneYear;
    public static String Roll_title;
    public static String Rows_reached;
    public static String Undo_nothing;
    public static String Undo_named;
    public static String Redo_nothing;
    public static String Redo_named;
    public static String About_title;
    public static String About_text;
    public static String Cautions_title;
    public static String Close;
    public static String Export_title;
    public static String Export_message;
    public static String Export_failed;
    public static String Export_noWhatIf;
    public static String Export_nothing;
    public static String Export_whatIf;
    public static String Export_whatIfEarlier;
    public static String Export_done;
    public static String Sheet_nothing;
    public static String Sheet_title;
    public static String Table_failed;
    public static String Table_fileKind;
    public static String Table_title;
    public static String Trace_added;
    public static String Import_anyFile;
    public static String Trace_failed;
    public static String Trace_fileKind;
    public static String Trace_next;
    public static String Trace_offer;
    public static String Import_more;
    public static String Import_reading;
    public static String Trace_title;
    public static String Language_ask;
    public static String Language_later;
    public static String Language_next;
    public static String Language_now;
    public static String Language_title;
    public static String Meter_added;
    public static String Meter_failed;
    public static String Meter_fileKind;
    public static String Meter_offer;
    public static String Meter_title;

    public static String Choice_all;
    public static String Choice_none;
    public static String Gtfs_block;
    public static String Gtfs_choose;
    public static String Gtfs_days;
    public static String Gtfs_failed;
    public static String Gtfs_fileKind;
    public static String Gtfs_filter;
    public static String Gtfs_imported;
    public static String Gtfs_next;
    public static String Gtfs_offer;
    public static String Gtfs_routes;
    public static String Gtfs_title;
    public static String Gtfs_trips;
    public static String Meter_choose;
    public static String Meter_noZone;
    public static String Meter_zone;
    public static String Update_changes;
    public static String Update_more;
    public static String Update_nothing;
    public static String Weather_choose;
    public static String Weather_failed;
    public static String Weather_fileKind;
    public static String Weather_imported;
    public static String Weather_offer;
    public static String Weather_title;

    public static String Drop_title;
    public static String Drop_unknown;
    public static String Folder_failed;
    public static String Folder_message;
    public static String Folder_title;
    public static String Undo_told;
    public static String Redo_told;

    static {
        NLS.initializeMessages("org.amberyard.workbench.handlers.messages", Messages.class);
    }

    private Messages() {
    }
}
