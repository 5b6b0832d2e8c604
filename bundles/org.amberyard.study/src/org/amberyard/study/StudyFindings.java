package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.amberyard.model.validation.StudyValidation;

/** What is found in a study before it is computed, worded in the study's own units. */
public final class StudyFindings {
    private StudyFindings() {
    }

    /** Findings of the rules of the model in the order of the study; a study without errors is looked at further. */
    public static List<Finding> of(Study study) {
        List<Finding> findings = new ArrayList<>(
                new StudyValidation((feature, owner, value) -> VariedNumber.text(FieldFormat.of(feature, study), study, owner, feature, value)).check(study));
        if (canEvaluate(findings)) {
            findings.addAll(TraceFindings.of(study));
            findings.addAll(TariffFindings.of(study));
        }
        findings.addAll(NarrativeFindings.of(study));
        return List.copyOf(findings);
    }

    /** True when nothing found keeps the study from being evaluated. */
    public static boolean canEvaluate(List<Finding> findings) {
        return findings.stream().noneMatch(f -> f.severity() == Severity.ERROR);
    }
}
