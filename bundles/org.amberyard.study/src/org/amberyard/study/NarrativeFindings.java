package org.amberyard.study;

import java.util.List;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.Phrase;
import org.amberyard.model.study.Narrative;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;

/** Says which narratives name figures that there are not; they keep no study from being evaluated. */
final class NarrativeFindings {
    private NarrativeFindings() {
    }

    static List<Finding> of(Study study) {
        return study.getNarratives().stream().flatMap(n -> NarrativeText.of(text(n)).faults().stream()
                .map(f -> new Finding(Severity.WARNING, n, StudyPackage.Literals.NARRATIVE__TEXT,
                        Phrase.start(ElementNames.withKind(n)) + ": " + f)))
                .toList();
    }

    private static String text(Narrative narrative) {
        return narrative.getText() == null ? "" : narrative.getText();
    }
}
