package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.core.tariff.HoursFault;
import org.amberyard.core.tariff.PriceFault;
import org.amberyard.core.tariff.TariffCheck;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.Phrase;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Says where tariffs by hours leave hours without price or price them twice; no bill is made of such a tariff. */
final class TariffFindings {
    private static final int MOST_LISTED = 6;

    private final List<Finding> findings = new ArrayList<>();

    private TariffFindings() {
    }

    /** Findings on the tariffs of a study whose rows have no error of their own. */
    static List<Finding> of(Study study) {
        TariffFindings tariffs = new TariffFindings();
        Depot depot = study.getDepot();
        Stream.concat(Stream.of(depot.getTariff()), depot.getAlternativeTariffs().stream())
                .filter(ScheduledTariff.class::isInstance).map(ScheduledTariff.class::cast).forEach(tariffs::look);
        return List.copyOf(tariffs.findings);
    }

    private void look(ScheduledTariff tariff) {
        var compiled = TariffCompiler.compile(tariff);
        List<HoursFault> hours = TariffCheck.hours(compiled);
        if (!hours.isEmpty()) {
            String more = hours.size() > MOST_LISTED ? "; and " + (hours.size() - MOST_LISTED) + " more" : "";
            error(tariff, Literals.SCHEDULED_TARIFF__CHARGES, hours.stream().limit(MOST_LISTED).map(HoursFault::message)
                    .collect(Collectors.joining("; ", "", more + ". Each hour needs just one energy charge; correct their hours.")));
        }
        TariffCheck.prices(compiled).forEach(fault -> tariff.getCharges().stream().filter(r -> isOf(r, fault))
                .forEach(row -> error(row, Literals.TARIFF_CHARGE__PRICE_PER_KWH, fault.message())));
        checkHolidays(tariff);
    }

    private static boolean isOf(TariffCharge row, PriceFault fault) {
        return row.getCharge().equals(fault.charge()) && row.getPricePerKwh() == fault.pricePerKwh();
    }

    private void checkHolidays(ScheduledTariff tariff) {
        try {
            HolidayText.parse(tariff.getHolidays());
        } catch (IllegalArgumentException e) {
            error(tariff, Literals.SCHEDULED_TARIFF__HOLIDAYS, e.getMessage() + ".");
        }
    }

    private void error(EObject element, EStructuralFeature field, String text) {
        findings.add(new Finding(Severity.ERROR, element, field, Phrase.start(ElementNames.withKind(element)) + ": " + text));
    }
}
