package org.amberyard.workbench.views;

import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.session.Evaluation;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.osgi.util.NLS;

/** Says where the results of a study stand. */
final class EvaluationWords {

    private EvaluationWords() {
    }

    static String of(StudySession session) {
        Evaluation evaluation = session.evaluation();
        return switch (evaluation.phase()) {
            case COMPUTING -> evaluation.done().isPresent() ? NLS.bind(Messages.Headline_computingShare, Math.round(100 * evaluation.done().getAsDouble()))
                    : Messages.Headline_computing;
            case CURRENT -> Messages.Headline_current;
            case STALE -> NLS.bind(Messages.Headline_stale, Words.say(evaluation.reason()));
        };
    }
}
