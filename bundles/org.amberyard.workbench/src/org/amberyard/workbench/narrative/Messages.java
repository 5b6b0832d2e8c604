package org.amberyard.workbench.narrative;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Figures_figure;
    public static String Figures_none;
    public static String Figures_now;
    public static String Figures_search;
    public static String Figures_table;
    public static String Figures_tip;
    public static String GiveOut_one;
    public static String GiveOut_several;
    public static String Narrative_added;
    public static String Narrative_changed;
    public static String Narrative_copy;
    public static String Narrative_copyAnyway;
    public static String Narrative_copyFaults;
    public static String Narrative_copyFaultsTitle;
    public static String Narrative_copy_tip;
    public static String Narrative_hint;
    public static String Narrative_none;
    public static String Narrative_occasion;
    public static String Narrative_occasionNoDay;
    public static String Narrative_othersSame;
    public static String Narrative_plan;
    public static String Narrative_preview;
    public static String Narrative_reading;
    public static String Narrative_same;
    public static String Narrative_text;

    static {
        NLS.initializeMessages("org.amberyard.workbench.narrative.messages", Messages.class);
    }

    private Messages() {
    }
}
