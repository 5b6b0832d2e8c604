package org.amberyard.workbench.session;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String EvaluationJob_name;
    public static String Evaluation_failed;
    public static String Evaluation_findings;
    public static String Evaluation_stopped;
    public static String Evaluation_finding;
    public static String NarrativeWatch_name;
    public static String RecoveryJob_name;
    public static String Session_set;
    public static String Session_untitled;
    public static String Step_default;
    public static String WhatIf_job;
    public static String WhatIf_earlier;
    public static String WhatIf_outdated;
    public static String WhatIf_stoppedAt;
    public static String WhatIf_stopped;
    public static String WhatIf_more;
    public static String WhatIf_otherKind;
    public static String WhatIf_sameInputs;
    public static String WhatIf_draws;
    public static String Step_many;
    public static String Step_manyOne;
    public static String Step_several;
    public static String Step_brief;
    public static String Step_change;
    public static String Step_come;
    public static String Step_gone;
    public static String Step_more;
    public static String Step_nothing;
    public static String WhatIf_estimating;
    public static String WhatIf_fewerDraws;
    public static String Run_anyway;
    public static String Run_fewer;
    public static String Run_minutes;
    public static String Run_moments;
    public static String Run_not;
    public static String Run_seconds;
    public static String Run_takes;
    public static String Run_title;
    public static String Run_unknown;

    static {
        NLS.initializeMessages("org.amberyard.workbench.session.messages", Messages.class);
    }

    private Messages() {
    }
}
