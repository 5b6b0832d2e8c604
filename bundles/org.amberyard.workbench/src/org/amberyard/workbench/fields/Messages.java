package org.amberyard.workbench.fields;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Change_default;
    public static String Change_emptied;
    public static String Field_delete_default;
    public static String Field_delete_empties;
    public static String Source_citation;
    public static String Source_date;
    public static String Source_date_hint;
    public static String Source_none;
    public static String Source_of;
    public static String Source_quality;
    public static String Tip_source;
    public static String Menu_selectAll;
    public static String Menu_note;
    public static String Note_edit;
    public static String Note_tip;
    public static String Note_title;
    public static String Menu_cut;
    public static String Menu_copy;
    public static String Menu_copyBare;
    public static String Menu_copyPlain;
    public static String Menu_paste;
    public static String Menu_fillDown;
    public static String Menu_clear;
    public static String Menu_delete;
    public static String Add;
    public static String Add_named;
    public static String Add_rows;
    public static String Add_tip;
    public static String Change_block;
    public static String Change_field;
    public static String Change_clear;
    public static String Computed_refused;
    public static String Delete;
    public static String Delete_rows;
    public static String Delete_tip;
    public static String Filter_count;
    public static String Filter_countOne;
    public static String Filter_hint;
    public static String Filter_tip;
    public static String Menu_columns;
    public static String Menu_filter;
    public static String Field_default;
    public static String Field_placeholder;
    public static String Limit_above;
    public static String Limit_atLeast;
    public static String Limit_atMost;
    public static String Limit_between;
    public static String Limit_refused;
    public static String NewElement_name;
    public static String Property_value;
    public static String Reference_refused;
    public static String Reference_none;
    public static String Required_refused;

    public static String Title_of;
    public static String Menu_vary;
    public static String Place_noKind;
    public static String Place_noField;
    public static String Place_every;
    public static String Place_kindFirst;
    public static String Title_remark;

    static {
        NLS.initializeMessages("org.amberyard.workbench.fields.messages", Messages.class);
    }

    private Messages() {
    }
}
