package org.amberyard.workbench.compare;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Compare_above;
    public static String Compare_another;
    public static String Compare_another_tip;
    public static String Compare_another_title;
    public static String Compare_below;
    public static String Compare_cannot;
    public static String Compare_count;
    public static String Compare_countOne;
    public static String Compare_different;
    public static String Compare_different_tip;
    public static String Compare_element;
    public static String Compare_figure;
    public static String Compare_figures;
    public static String Compare_input;
    public static String Compare_isThere;
    public static String Compare_making;
    public static String Compare_none;
    public static String Compare_other;
    public static String Compare_planOf;
    public static String Compare_plans;
    public static String Compare_reading;
    public static String Compare_rows;
    public static String Compare_rows_tip;
    public static String Compare_section;
    public static String Compare_studies;
    public static String Compare_studies_of;
    public static String Compare_unit;
    public static String Compare_what_tip;

    static {
        NLS.initializeMessages("org.amberyard.workbench.compare.messages", Messages.class);
    }

    private Messages() {
    }
}
