package org.amberyard.workbench.editor;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Editor_changedOutside;
    public static String Editor_overwrite;
    public static String Editor_saveAs;
    public static String Editor_saveFailed;
    public static String Editor_fileKind;
    public static String Editor_unnamed;
    public static String DefaultFactors;
    public static String DefaultFactors_tip;
    public static String DefaultTasks;
    public static String DefaultTasks_tip;
    public static String Fault_more;
    public static String Fault_open;
    public static String FitCurve;
    public static String FitCurve_tip;
    public static String Page_study;
    public static String Page_climate;
    public static String Page_routes;
    public static String Page_buses;
    public static String Page_trips;
    public static String Page_measurements;
    public static String Page_types;
    public static String Page_upkeep;
    public static String Page_depot;
    public static String Page_tariffs;
    public static String Page_building;
    public static String Page_prices;
    public static String Page_funding;
    public static String Page_air;
    public static String Page_planGrid;
    public static String Page_plans;
    public static String Plan_copy;
    public static String Plan_fill;
    public static String Table_study;
    public static String Table_settings;
    public static String Table_site;
    public static String Table_emissions;
    public static String Table_engineEmissions;
    public static String Table_fuelEmissions;
    public static String Table_gridEmissions;
    public static String Table_healthCosts;
    public static String Table_socialCosts;
    public static String Table_wearEmissions;
    public static String Table_climate;
    public static String Table_calendars;
    public static String Table_routes;
    public static String Table_runs;
    public static String Table_buses;
    public static String Table_trips;
    public static String Table_logs;
    public static String Table_tasks;
    public static String Table_engines;
    public static String Table_electric;
    public static String Table_depot;
    public static String Table_tariff;
    public static String Table_tariffs;
    public static String Table_charges;
    public static String Table_chargeScopes;
    public static String Table_chargeYears;
    public static String Table_building;
    public static String Table_loadDays;
    public static String Table_upgrades;
    public static String LoadDay_mean;
    public static String LoadDay_mean_tip;
    public static String LoadDay_peak;
    public static String LoadDay_peak_tip;
    public static String Meter_import;
    public static String Meter_import_tip;
    public static String FlatTariff;
    public static String FlatTariff_tip;
    public static String UseTariff;
    public static String UseTariff_tip;
    public static String UseTariff_done;
    public static String Table_ports;
    public static String Table_works;
    public static String Table_fuels;
    public static String Table_financing;
    public static String Table_fluid;
    public static String Table_pack;
    public static String Table_indexes;
    public static String Table_points;
    public static String Table_programmes;
    public static String Table_programme;
    public static String Table_credits;
    public static String Table_aids;
    public static String Table_awards;
    public static String Table_plans;
    public static String Table_replacements;
    public static String Table_portPurchases;
    public static String Table_workOrders;
    public static String Table_oneOffs;
    public static String Table_traces;
    public static String Trace_import;
    public static String Trace_import_tip;
    public static String Trace_length;
    public static String Trace_length_tip;
    public static String Trace_duration;
    public static String Trace_duration_tip;
    public static String Trace_meanSpeed;
    public static String Trace_meanSpeed_tip;
    public static String Trace_stops;
    public static String Trace_stops_tip;
    public static String Trace_climb;
    public static String Trace_climb_tip;

    static {
        NLS.initializeMessages("org.amberyard.workbench.editor.messages", Messages.class);
    }

    private Messages() {
    }
}
