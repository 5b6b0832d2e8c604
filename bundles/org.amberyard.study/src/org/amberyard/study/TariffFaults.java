package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.amberyard.core.tariff.HoursFault;
import org.amberyard.core.tariff.PriceFault;
import org.amberyard.core.tariff.TariffCheck;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.FlatTariff;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.Tariff;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.depot.TariffChargeKind;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Why no bill is made of a tariff: hours without price or priced twice, prices in cents, holidays that mean nothing. */
final class TariffFaults {
    private static final int MOST_LISTED = 6;
    private static final String ADVICE = ". Each hour needs just one energy charge; correct their hours.";

    private final List<Fault> faults = new ArrayList<>();

    /**
     * A fault.
     *
     * @param element the tariff, or the row that is at fault
     * @param field the field to put right; null for the tariff as a whole
     * @param text what is wrong and what to do
     */
    record Fault(EObject element, EStructuralFeature field, String text) {
    }

    private TariffFaults() {
    }

    /** Faults of a tariff whose rows have no error of their own; none for a tariff that can be billed. */
    static List<Fault> of(Tariff tariff) {
        TariffFaults found = new TariffFaults();
        if (tariff instanceof ScheduledTariff scheduled) {
            found.look(scheduled);
        }
        if (tariff instanceof FlatTariff flat && !pricesUse(flat) && flat.getMonthlyCharge() == 0) {
            found.add(flat, Literals.FLAT_TARIFF__ENERGY_PRICE_PER_KWH, "its prices have not been given; enter those of the tariff sheet.");
        }
        return List.copyOf(found.faults);
    }

    /** True for a tariff that asks a monthly charge and nothing for what is drawn: it can be billed, but may not have been filled in. */
    static boolean asksMonthlyChargeAlone(Tariff tariff) {
        return tariff instanceof FlatTariff flat && !pricesUse(flat) && flat.getMonthlyCharge() != 0;
    }

    private static boolean pricesUse(FlatTariff flat) {
        return flat.getEnergyPricePerKwh() != 0 || flat.getRiderPerKwh() != 0 || flat.getDemandPricePerKw() != 0;
    }

    private void look(ScheduledTariff tariff) {
        var compiled = TariffCompiler.compile(tariff);
        List<HoursFault> hours = TariffCheck.hours(compiled);
        add(tariff, null, hours.stream().filter(h -> h.charges().isEmpty()).toList());
        tariff.getCharges().stream().filter(row -> row.getKind() == TariffChargeKind.ENERGY)
                .forEach(row -> add(row, Literals.TARIFF_CHARGE__FROM_MIN,
                        hours.stream().filter(h -> ChargeRows.isOf(row, h)).toList()));
        TariffCheck.prices(compiled).forEach(fault -> tariff.getCharges().stream().filter(r -> isOf(r, fault))
                .forEach(row -> add(row, Literals.TARIFF_CHARGE__PRICE_PER_KWH, fault.message())));
        checkHolidays(tariff);
    }

    private static boolean isOf(TariffCharge row, PriceFault fault) {
        return row.getCharge().equals(fault.charge()) && row.getPricePerKwh() == fault.pricePerKwh();
    }

    private void checkHolidays(ScheduledTariff tariff) {
        try {
            HolidayText.parse(tariff.getHolidays());
        } catch (IllegalArgumentException e) {
            add(tariff, Literals.SCHEDULED_TARIFF__HOLIDAYS, e.getMessage() + ".");
        }
    }

    /** Hours without a price are the tariff's fault, those priced twice that of each row that prices them. */
    private void add(EObject element, EStructuralFeature field, List<HoursFault> hours) {
        if (!hours.isEmpty()) {
            String more = hours.size() > MOST_LISTED ? "; and " + (hours.size() - MOST_LISTED) + " more" : "";
            add(element, field, hours.stream().limit(MOST_LISTED).map(HoursFault::message)
                    .collect(Collectors.joining("; ", "", more + ADVICE)));
        }
    }

    private void add(EObject element, EStructuralFeature field, String text) {
        faults.add(new Fault(element, field, text));
    }
}
