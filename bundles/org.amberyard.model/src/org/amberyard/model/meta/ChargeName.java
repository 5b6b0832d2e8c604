package org.amberyard.model.meta;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.model.common.Month;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.depot.TariffDays;

/** Names rows of a tariff so that they can be told apart: {@code On-peak energy, weekdays, 14:00 to 20:00}. */
final class ChargeName {
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
        return String.join(", ", parts);
    }
}
