package org.amberyard.workbench.measurements;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Fit_accept;
    public static String Fit_accept_tip;
    public static String Fit_blankRise;
    public static String Fit_command;
    public static String Fit_coolsBelowMild;
    public static String Fit_fitting;
    public static String Fit_job;
    public static String Fit_noChart;
    public static String Fit_noLogs;
    public static String Fit_reject;
    public static String Fit_reject_tip;
    public static String Fit_title;
    public static String Fit_type;
    public static String Fit_commandUsed;
    public static String Logs_allBuses;
    public static String Logs_allSources;
    public static String Logs_anyDay;
    public static String Logs_bus;
    public static String Logs_day_tip;
    public static String Logs_from;
    public static String Logs_noDay;
    public static String Logs_noSource;
    public static String Logs_source;
    public static String Logs_until;
    public static String Use_none;
    public static String Use_routes;
    public static String Use_tip;

    static {
        NLS.initializeMessages("org.amberyard.workbench.measurements.messages", Messages.class);
    }

    private Messages() {
    }
}
