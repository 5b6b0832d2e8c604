package org.amberyard.workbench.session;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String EvaluationJob_name;
    public static String Evaluation_failed;
    public static String Evaluation_findings;
    public static String Evaluation_stopped;
    public static String Evaluation_finding;
    public static String RecoveryJob_name;
    public static String Session_untitled;
    public static String WhatIf_job;

    static {
        NLS.initializeMessages("org.amberyard.workbench.session.messages", Messages.class);
    }

    private Messages() {
    }
}
