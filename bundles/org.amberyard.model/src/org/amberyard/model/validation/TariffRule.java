package org.amberyard.model.validation;

import java.util.Objects;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.Tariff;
import org.amberyard.model.meta.Holidays;
import org.amberyard.model.study.Study;

/** Tariffs are told apart by name, and their holidays are days. */
final class TariffRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        Tariff inUse = study.getDepot() == null ? null : study.getDepot().getTariff();
        if (inUse != null) {
            study.getDepot().getAlternativeTariffs().stream().filter(t -> Objects.equals(t.getName(), inUse.getName()))
                    .forEach(t -> findings.error(t, Literals.TARIFF__NAME,
                            "the tariff in use has the same name; give each its own."));
        }
        Tariffs.byHours(study).forEach(t -> checkHolidays(t, findings));
    }

    private static void checkHolidays(ScheduledTariff tariff, Findings findings) {
        try {
            Holidays.parse(tariff.getHolidays());
        } catch (IllegalArgumentException e) {
            findings.error(tariff, Literals.SCHEDULED_TARIFF__HOLIDAYS, "holidays: " + e.getMessage() + ".");
        }
    }
}
