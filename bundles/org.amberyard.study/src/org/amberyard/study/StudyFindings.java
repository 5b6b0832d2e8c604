package org.amberyard.study;

import java.util.List;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.amberyard.model.validation.StudyValidation;

/** What the rules of the model find in a study, worded in the study's own units. */
public final class StudyFindings {
    private StudyFindings() {
    }

    /** Findings in the order of the study. */
    public static List<Finding> of(Study study) {
        return new StudyValidation((feature, owner, value) -> FieldFormat.of(feature, study).textWithUnit(value))
                .check(study);
    }

    /** True when nothing found keeps the study from being evaluated. */
    public static boolean canEvaluate(List<Finding> findings) {
        return findings.stream().noneMatch(f -> f.severity() == Severity.ERROR);
    }
}
