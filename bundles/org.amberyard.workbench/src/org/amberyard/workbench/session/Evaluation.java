package org.amberyard.workbench.session;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.validation.Finding;

/**
 * What is known of the results of a study at a moment.
 *
 * @param phase whether the results are those of the study as it stands
 * @param result the last results, if there have been any
 * @param reason why the results are stale, in words; blank otherwise
 * @param findings findings in the study, then those in its results
 * @param done part of the work that is done, 0 to 1, where the results have been in the making for longer than a moment
 */
public record Evaluation(Phase phase, Optional<StudyResult> result, String reason, List<Finding> findings, OptionalDouble done) {

    /** Where an evaluation stands. */
    public enum Phase {
        /** The results are being computed; older ones are on show. */
        COMPUTING,
        /** The results are those of the study as it stands. */
        CURRENT,
        /** The study cannot be evaluated as it stands; older results are on show, if there are any. */
        STALE
    }

    static final Evaluation NONE = new Evaluation(Phase.COMPUTING, Optional.empty(), "", List.of(), OptionalDouble.empty());

    public Evaluation {
        // An unmodifiable list stays the same one, so that whoever shows it can tell whether it has changed.
        findings = List.copyOf(findings);
    }

    Evaluation computing() {
        return new Evaluation(Phase.COMPUTING, result, "", findings, phase == Phase.COMPUTING ? done : OptionalDouble.empty());
    }

    Evaluation beLate(double share) {
        return new Evaluation(phase, result, reason, findings, OptionalDouble.of(share));
    }

    /** True when the results have been in the making for longer than a moment. */
    public boolean late() {
        return done.isPresent();
    }

    /** True when figures on show are not those of the study, and will not be so in the next moment either. */
    public boolean isOutdated() {
        return phase == Phase.STALE || phase == Phase.COMPUTING && late();
    }

    /** The results, if they are those of the study as it stands. */
    public Optional<StudyResult> current() {
        return result.filter(r -> phase == Phase.CURRENT);
    }

    Evaluation stale(String why, List<Finding> found) {
        return new Evaluation(Phase.STALE, result, why, found, OptionalDouble.empty());
    }
}
