package org.amberyard.workbench.session;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.validation.Finding;

/**
 * What is known of the results of a study at a moment.
 *
 * @param phase whether the results are those of the study as it stands
 * @param result the last results, if there have been any
 * @param reason why the results are stale, in words; blank otherwise
 * @param findings findings in the study, then those in its results
 */
public record Evaluation(Phase phase, Optional<StudyResult> result, String reason, List<Finding> findings) {

    /** Where an evaluation stands. */
    public enum Phase {
        /** The results are being computed; older ones are on show. */
        COMPUTING,
        /** The results are those of the study as it stands. */
        CURRENT,
        /** The study cannot be evaluated as it stands; older results are on show, if there are any. */
        STALE
    }

    static final Evaluation NONE = new Evaluation(Phase.COMPUTING, Optional.empty(), "", List.of());

    public Evaluation {
        // An unmodifiable list stays the same one, so that whoever shows it can tell whether it has changed.
        findings = List.copyOf(findings);
    }

    Evaluation computing() {
        return new Evaluation(Phase.COMPUTING, result, "", findings);
    }

    Evaluation stale(String why, List<Finding> found) {
        return new Evaluation(Phase.STALE, result, why, found);
    }
}
