package org.amberyard.workbench.sheets;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Mend_cell;
    public static String Mend_done;
    public static String Mend_inFile;
    public static String Mend_leaveOut;
    public static String Mend_leftOut;
    public static String Mend_restore;
    public static String Mend_takeIn;
    public static String Table_addTypes;
    public static String Table_becomes;
    public static String Table_cells;
    public static String Table_change;
    public static String Table_changes;
    public static String Table_columns;
    public static String Table_done;
    public static String Table_element;
    public static String Table_examples;
    public static String Table_from;
    public static String Table_header;
    public static String Table_headerRow;
    public static String Table_holds;
    public static String Table_import;
    public static String Table_kind;
    public static String Table_looking;
    public static String Table_new;
    public static String Table_notUsed;
    public static String Table_notUsed_tip;
    public static String Table_note;
    public static String Table_notes;
    public static String Table_nothing;
    public static String Table_nothingNew;
    public static String Table_preview;
    public static String Table_problem;
    public static String Table_problems;
    public static String Table_recognising;
    public static String Table_refused;
    public static String Table_row;
    public static String Table_rows;
    public static String Table_sheet;
    public static String Table_title;
    public static String Table_together;
    public static String Table_typed;
    public static String Table_unit;
    public static String Table_unit_tip;
    public static String Table_why;

    static {
        NLS.initializeMessages("org.amberyard.workbench.sheets.messages", Messages.class);
    }

    private Messages() {
    }
}
