package org.amberyard.workbench.charts;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Chart_failed;
    public static String Chart_painting;
    public static String Chart_noBuses;
    public static String Chart_noStudy;
    public static String Chart_computing;
    public static String Chart_nothing;
    public static String Chart_stale;
    public static String Choice_bus;
    public static String Choice_compared;
    public static String Choice_day;
    public static String Choice_month;
    public static String Choice_plan;
    public static String Choice_pollutant;
    public static String Choice_route;
    public static String Choice_stretch;
    public static String Choice_tip;
    public static String Choice_type;
    public static String Choice_year;
    public static String Day_extendedYear;
    public static String Inputs_bus;
    public static String Inputs_button;
    public static String Inputs_factors;
    public static String Inputs_field;
    public static String Inputs_gone;
    public static String Inputs_plan;
    public static String Inputs_route;
    public static String Inputs_type;
    public static String Menu_copyData;
    public static String Menu_copyPicture;
    public static String Menu_noteChange;
    public static String Menu_noteDelete;
    public static String Menu_noteHere;
    public static String Menu_notes;
    public static String Menu_savePng;
    public static String Menu_saveSvg;
    public static String Menu_taskSheet;
    public static String Menu_print;
    public static String Menu_saveCsv;
    public static String Menu_savePdf;
    public static String Menu_series;
    public static String Menu_seriesAll;
    public static String Menu_whole;
    public static String Menu_zoomIn;
    public static String Menu_zoomOut;
    public static String Menu_inputs;
    public static String Menu_outage;
    public static String Missing_compared;
    public static String Missing_route;
    public static String Missing_stretch;
    public static String Missing_type;
    public static String Note_ask;
    public static String Note_deleted;
    public static String Note_title;
    public static String Outage_button;
    public static String Outage_tip;
    public static String Print_none;
    public static String Print_refused;
    public static String Print_title;
    public static String Save_failed;
    public static String Slider_pause;
    public static String Slider_play;
    public static String Tip_inputs;
    public static String Tip_legend;
    public static String WhatIf_run;
    public static String WhatIf_run_tip;
    public static String WhatIf_stop;
    public static String WhatIf_goOn;
    public static String WhatIf_chart_tip;
    public static String WhatIf_inputs;
    public static String WhatIf_percent;
    public static String WhatIf_left;
    public static String WhatIf_seconds;
    public static String WhatIf_minutes;
    public static String WhatIf_noInputs;
    public static String WhatIf_running;
    public static String WhatIf_failed;
    public static String WhatIf_changedSince;
    public static String WhatIf_notRun;
    public static String WhatIf_stopping;
    public static String WhatIf_waits;
    public static String Bill_noElectric;
    public static String Bill_of;
    public static String Bill_policies;
    public static String Bill_policies_tip;
    public static String Bill_tariffs;
    public static String Bill_tariffs_tip;
    public static String Choice_policy;
    public static String Choice_tariff;
    public static String Bill_capped;

    static {
        NLS.initializeMessages("org.amberyard.workbench.charts.messages", Messages.class);
    }

    private Messages() {
    }
}
