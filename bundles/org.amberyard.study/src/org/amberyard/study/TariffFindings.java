package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.model.depot.Tariff;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.Phrase;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;

/**
 * Says which tariffs cannot be billed and why. Without the tariff in use a study cannot be evaluated; one to compare with is left
 * out.
 */
final class TariffFindings {
    private static final String LEFT_OUT = " Until then the tariff is left out of the comparison.";

    private TariffFindings() {
    }

    /** Findings on the tariffs of a study whose rows have no error of their own. */
    static List<Finding> of(Study study) {
        List<Finding> findings = new ArrayList<>(findings(study.getDepot().getTariff(), Severity.ERROR, ""));
        study.getDepot().getAlternativeTariffs().forEach(t -> findings.addAll(findings(t, Severity.WARNING, LEFT_OUT)));
        return List.copyOf(findings);
    }

    private static List<Finding> findings(Tariff tariff, Severity severity, String then) {
        return TariffFaults.of(tariff).stream().map(f -> new Finding(severity, f.element(), f.field(),
                Phrase.start(ElementNames.withKind(f.element())) + ": " + f.text() + then)).toList();
    }
}
