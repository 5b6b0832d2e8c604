package org.amberyard.workbench.begin;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Begin_ages;
    public static String Begin_bodyA;
    public static String Begin_bodyB;
    public static String Begin_bodyC;
    public static String Begin_bodyD;
    public static String Begin_coldest;
    public static String Begin_day;
    public static String Begin_days;
    public static String Begin_demand;
    public static String Begin_diesel;
    public static String Begin_electric;
    public static String Begin_electricBy;
    public static String Begin_electricity;
    public static String Begin_empty;
    public static String Begin_energy;
    public static String Begin_engine;
    public static String Begin_from;
    public static String Begin_hint;
    public static String Begin_january;
    public static String Begin_july;
    public static String Begin_metric;
    public static String Begin_name;
    public static String Begin_newest;
    public static String Begin_noName;
    public static String Begin_ok;
    public static String Begin_oldest;
    public static String Begin_onRoutes;
    public static String Begin_refused;
    public static String Begin_spares;
    public static String Begin_title;
    public static String Begin_units;
    public static String Begin_us;
    public static String Begin_usualName;
    public static String Begin_weather;
    public static String Begin_years;

    static {
        NLS.initializeMessages("org.amberyard.workbench.begin.messages", Messages.class);
    }

    private Messages() {
    }
}
