package org.amberyard.charts;

import org.amberyard.core.plan.StudyResult;

/** The plan that a chart of a single plan shows until another is chosen. */
public final class FirstPlan {
    private FirstPlan() {
    }

    /** The place of the first plan that is compared with the baseline, else of the baseline. */
    public static int of(StudyResult result) {
        return result.comparisons().isEmpty() ? result.input().baseline() : result.comparisons().get(0).plan();
    }
}
