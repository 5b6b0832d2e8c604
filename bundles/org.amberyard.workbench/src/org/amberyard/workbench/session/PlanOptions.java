package org.amberyard.workbench.session;

import org.amberyard.charts.FirstPlan;
import org.amberyard.core.plan.StudyResult;

/** The plans of a result to choose from. */
public final class PlanOptions {
    private PlanOptions() {
    }

    /** All plans; the program prefers the first that is compared with the baseline. */
    public static Options of(StudyResult result) {
        return Options.upTo(result.plans().size(), p -> result.plans().get(p).name(), FirstPlan.of(result));
    }
}
