package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.model.depot.DepotPackage.Literals;
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
    private static final String FIXED_ALONE = ": it asks a monthly charge and nothing per kWh or kW; enter the prices of the tariff sheet.";

    private TariffFindings() {
    }

    /** Findings on the tariffs of a study whose rows have no error of their own. */
    static List<Finding> of(Study study) {
        List<Finding> findings = new ArrayList<>(findings(study.getDepot().getTariff(), Severity.ERROR, ""));
        study.getDepot().getAlternativeTariffs().forEach(t -> findings.addAll(findings(t, Severity.WARNING, LEFT_OUT)));
        Stream.concat(Stream.of(study.getDepot().getTariff()), study.getDepot().getAlternativeTariffs().stream())
                .filter(TariffFaults::asksMonthlyChargeAlone).forEach(t -> findings.add(new Finding(Severity.WARNING, t,
                        Literals.FLAT_TARIFF__ENERGY_PRICE_PER_KWH, Phrase.start(ElementNames.withKind(t)) + FIXED_ALONE)));
        return List.copyOf(findings);
    }

    private static List<Finding> findings(Tariff tariff, Severity severity, String then) {
        return TariffFaults.of(tariff).stream().map(f -> new Finding(severity, f.element(), f.field(),
                Phrase.start(ElementNames.withKind(f.element())) + ": " + f.text() + then)).toList();
    }
}
