package org.amberyard.workbench.plan;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Bar_copy;
    public static String Bar_copy_tip;
    public static String Bar_delete;
    public static String Bar_delete_tip;
    public static String Bar_fill;
    public static String Bar_fill_tip;
    public static String Bar_level;
    public static String Bar_level_tip;
    public static String Bar_plan;
    public static String Bar_rename;
    public static String Bar_rename_tip;
    public static String Brush_buy_tip;
    public static String Brush_retire;
    public static String Brush_retire_tip;
    public static String Brush_rule;
    public static String Brush_rule_tip;
    public static String Brush_select;
    public static String Brush_select_tip;
    public static String Cell_notHere;
    public static String Column_age;
    public static String Column_age_tip;
    public static String Column_bus;
    public static String Column_bus_tip;
    public static String Column_role;
    public static String Column_role_tip;
    public static String Column_route;
    public static String Column_route_tip;
    public static String Column_type;
    public static String Column_type_tip;
    public static String Copy_done;
    public static String Copy_title;
    public static String Delete_done;
    public static String Edit_many;
    public static String Edit_one;
    public static String Fill_accept;
    public static String Fill_activity;
    public static String Fill_allBy;
    public static String Fill_atAge;
    public static String Fill_buses;
    public static String Fill_buy;
    public static String Fill_done;
    public static String Fill_electric;
    public static String Fill_engine;
    public static String Fill_from;
    public static String Fill_noPlaces;
    public static String Fill_noProgramme;
    public static String Fill_noResults;
    public static String Fill_perYear;
    public static String Fill_places;
    public static String Fill_ports;
    public static String Fill_portsStay;
    public static String Fill_programme;
    public static String Fill_replace;
    public static String Fill_route;
    public static String Fill_share;
    public static String Fill_spare;
    public static String Fill_title;
    public static String Fill_titleOf;
    public static String Fill_to;
    public static String Fill_years;
    public static String Fill_yearsBackwards;
    public static String Legend;
    public static String Level_accept;
    public static String Level_done;
    public static String Level_noCap;
    public static String Level_noResults;
    public static String Level_searching;
    public static String Level_title;
    public static String Level_titleOf;
    public static String Menu_earlier;
    public static String Menu_fill;
    public static String Menu_later;
    public static String Menu_level;
    public static String Menu_rule;
    public static String Name_ask;
    public static String Name_blank;
    public static String Name_taken;
    public static String Rename_done;
    public static String Rename_title;
    public static String Step_misfit;
    public static String Step_retire;
    public static String Step_rule;
    public static String Step_unknown;
    public static String Stroke_more;
    public static String Stroke_replaced;
    public static String Words_byPlan;
    public static String Words_byRule;
    public static String Words_kept;
    public static String Words_moved;
    public static String Words_moves;
    public static String Words_none;
    public static String Words_asked;
    public static String Words_nothing;
    public static String Words_pays;
    public static String Words_retired;
    public static String Words_year;

    static {
        NLS.initializeMessages("org.amberyard.workbench.plan.messages", Messages.class);
    }

    private Messages() {
    }
}
