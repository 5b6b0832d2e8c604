package org.amberyard.model.validation;

import java.util.Objects;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.Tariff;
import org.amberyard.model.study.Study;

/** Tariffs to compare with do not bear the name of the one in use. */
final class TariffRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        Tariff inUse = study.getDepot() == null ? null : study.getDepot().getTariff();
        if (inUse != null) {
            study.getDepot().getAlternativeTariffs().stream().filter(t -> Objects.equals(t.getName(), inUse.getName()))
                    .forEach(t -> findings.error(t, Literals.TARIFF__NAME,
                            "the tariff in use has the same name; give each its own."));
        }
    }
}
