package org.amberyard.workbench.charts;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Chart_painting;
    public static String Chart_noBuses;
    public static String Chart_noStudy;
    public static String Chart_computing;
    public static String Chart_nothing;
    public static String Chart_stale;
    public static String Menu_copyData;
    public static String Menu_copyPicture;
    public static String Menu_savePng;
    public static String Menu_saveSvg;
    public static String Menu_saveCsv;
    public static String Save_failed;

    static {
        NLS.initializeMessages("org.amberyard.workbench.charts.messages", Messages.class);
    }

    private Messages() {
    }
}
