package org.amberyard.workbench.session;

import org.amberyard.study.StudyEvaluator;
import org.amberyard.workbench.preferences.Preferences;

/**
 * What a session works with.
 *
 * @param evaluator evaluates its study
 * @param keptAfterMs longest time that an edit lives in memory only, in milliseconds
 */
public record SessionTools(StudyEvaluator evaluator, int keptAfterMs) {

    private static final int MS_PER_S = 1000;

    /** Tools of its own for a session; edits are kept as often as the user wants. */
    public static SessionTools fresh() {
        return new SessionTools(new StudyEvaluator(), MS_PER_S * Preferences.KEPT_AFTER_S.number());
    }
}
