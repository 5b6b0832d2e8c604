package org.amberyard.workbench.session;

import org.amberyard.study.StudyEvaluator;

/**
 * What a session works with.
 *
 * @param evaluator evaluates its study
 * @param keptAfterMs longest time that an edit lives in memory only, in milliseconds
 */
public record SessionTools(StudyEvaluator evaluator, int keptAfterMs) {

    private static final int KEPT_AFTER_MS = 10_000;

    /** Tools of its own for a session. */
    public static SessionTools fresh() {
        return new SessionTools(new StudyEvaluator(), KEPT_AFTER_MS);
    }
}
