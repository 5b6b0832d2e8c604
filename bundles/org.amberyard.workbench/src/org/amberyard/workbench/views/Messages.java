package org.amberyard.workbench.views;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Headline_tariff;
    public static String Headline_tariff_tip;
    public static String Menu_why;
    public static String Notes_change;
    public static String Notes_count;
    public static String Notes_countOne;
    public static String Notes_none;
    public static String Notes_note;
    public static String Notes_open;
    public static String Notes_search;
    public static String Notes_search_tip;
    public static String Notes_where;
    public static String Finding_error;
    public static String Finding_warning;
    public static String Finding_notice;
    public static String Findings_kind;
    public static String Findings_where;
    public static String Findings_what;
    public static String Headline_none;
    public static String Headline_computing;
    public static String Headline_computingShare;
    public static String Headline_current;
    public static String Headline_stale;
    public static String Headline_cautions;
    public static String History_after;
    public static String History_before;
    public static String History_edit;
    public static String History_field;
    public static String History_go;
    public static String History_go_menu;
    public static String History_go_tip;
    public static String History_here;
    public static String History_kept;
    public static String History_many;
    public static String History_manyOne;
    public static String History_opened;
    public static String History_opened_tip;
    public static String History_state;
    public static String History_stateOne;
    public static String History_state_back;
    public static String History_state_backOne;
    public static String History_time;
    public static String History_undone;
    public static String History_where;
    public static String Outline_chartNotes;
    public static String Outline_narratives;
    public static String Outline_busRecords;
    public static String Results_choose;
    public static String Results_chosen;
    public static String Results_failed;
    public static String Results_filter;
    public static String Results_making;
    public static String Results_rows;
    public static String Results_rows_tip;
    public static String Results_save;
    public static String Results_saveFailed;
    public static String Results_whatIf;
    public static String Why_figure;
    public static String Why_making;
    public static String Why_none;
    public static String Why_rule;
    public static String Why_source;
    public static String Why_value;
    public static String Key_plan;
    public static String Key_cost;
    public static String Key_perYear;
    public static String Key_saving;
    public static String Key_air;
    public static String Outline_calendars;
    public static String Outline_routes;
    public static String Outline_service;
    public static String Outline_tariff;
    public static String Outline_tariffs;
    public static String Outline_building;
    public static String Outline_upgrades;
    public static String Outline_trips;
    public static String Outline_logs;
    public static String Outline_traces;
    public static String Outline_actuals;
    public static String Outline_tasks;
    public static String Outline_types;
    public static String Outline_buses;
    public static String Outline_works;
    public static String Outline_ports;
    public static String Outline_prices;
    public static String Outline_funding;
    public static String Outline_credits;
    public static String Outline_aids;
    public static String Outline_plans;
    public static String Outline_settings;
    public static String Outline_emissions;
    public static String Outline_climate;
    public static String Headline_undone;
    public static String Headline_redone;
    public static String Headline_changes;

    static {
        NLS.initializeMessages("org.amberyard.workbench.views.messages", Messages.class);
    }

    private Messages() {
    }
}
