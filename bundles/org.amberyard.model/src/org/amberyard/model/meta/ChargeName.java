package org.amberyard.model.meta;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.model.common.Month;
import org.amberyard.model.depot.DepotPackage;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.depot.TariffDays;

/** Names rows of a tariff so that they can be told apart: {@code On-peak energy, weekdays, 14:00 to 20:00}. */
final class ChargeName {
    private static final int NO_END = (int) DepotPackage.Literals.TARIFF_CHARGE__LAST_CONTRACT_YEAR.getDefaultValue();

    private ChargeName() {
    }

    static String of(TariffCharge row) {
        List<String> parts = new ArrayList<>();
        parts.add(row.getCharge() == null || row.getCharge().isBlank() ? "?" : row.getCharge().strip());
        if (row.getFirstMonth() != Month.JANUARY || row.getLastMonth() != Month.DECEMBER) {
            parts.add(row.getFirstMonth().getLiteral() + " to " + row.getLastMonth().getLiteral());
        }
        if (row.getDays() != TariffDays.ALL) {
            parts.add(row.getDays().getLiteral());
        }
        if (row.getFromMin() != row.getToMin()) {
            parts.add(ClockTime.text(row.getFromMin()) + " to " + ClockTime.text(row.getToMin()));
        }
        if (row.getFromKwh() > 0) {
            parts.add("from " + PlainNumber.text(row.getFromKwh()) + " kWh");
        }
        if (row.getFromHoursOfUse() > 0) {
            parts.add("from " + PlainNumber.text(row.getFromHoursOfUse()) + " h of use");
        }
        years(row).ifPresent(parts::add);
        return String.join(", ", parts);
    }

    private static Optional<String> years(TariffCharge row) {
        int first = row.getFirstContractYear();
        int last = row.getLastContractYear();
        if (last == NO_END) {
            return first == 1 ? Optional.empty() : Optional.of("from year " + first);
        }
        return Optional.of(first == last ? "year " + first : "years " + first + " to " + last);
    }
}
