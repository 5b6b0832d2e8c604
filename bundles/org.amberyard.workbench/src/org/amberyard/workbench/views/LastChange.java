package org.amberyard.workbench.views;

import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.report.ChangeSentence;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.session.Evaluation;
import org.amberyard.workbench.session.HistoryMove;
import org.amberyard.workbench.session.StepWords;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.osgi.util.NLS;

/** Says what the last change of a study, made, taken back or made again, has done to the cost of a plan. */
final class LastChange {
    private StudySession session;
    private StudyResult before;
    private StudyResult after;
    private int revision;
    private int changes;

    /** Takes notice of where a study stands; null for none. */
    void see(StudySession now) {
        if (now != session) {
            session = now;
            before = null;
            after = null;
        }
        if (session != null && session.evaluation().phase() == Evaluation.Phase.CURRENT) {
            current(session.evaluation().result().orElseThrow());
        }
    }

    private void current(StudyResult result) {
        if (after == null || session.revision() != revision) {
            before = after;
            changes = session.revision() - revision;
            revision = session.revision();
        }
        after = result;
    }

    /** The sentence for a plan; empty as long as results are not up to date or nothing has changed since the study was opened. */
    Optional<String> words(int plan) {
        boolean current = session != null && session.evaluation().phase() == Evaluation.Phase.CURRENT;
        return current && before != null && plan < after.plans().size() ? session.history().last().flatMap(move -> words(plan, move))
                : Optional.empty();
    }

    private Optional<String> words(int plan, HistoryMove move) {
        boolean lastEdit = changes == 1 && move.way() == HistoryMove.Way.EDIT;
        String cause = changes > 1 ? NLS.bind(Messages.Headline_changes, changes) : named(move);
        return ChangeSentence.of(before, after, plan, lastEdit ? ChangeSentence.Cause.LAST_EDIT : ChangeSentence.Cause.THIS)
                .map(s -> lastEdit ? Words.say(s) : cause + " " + Words.say(s));
    }

    private static String named(HistoryMove move) {
        return NLS.bind(move.way() == HistoryMove.Way.UNDO ? Messages.Headline_undone : Messages.Headline_redone,
                StepWords.brief(move.steps()));
    }
}
