package org.amberyard.core.tariff;

import java.util.List;

/**
 * What a meter counts in a month.
 *
 * @param month month, 0 for January
 * @param days kinds of days of the month
 */
public record MeterMonth(int month, List<LoadDay> days) {

    public MeterMonth {
        days = List.copyOf(days);
    }

    /** Energy of the month, kWh. */
    public double kwh() {
        return days.stream().mapToDouble(d -> d.days() * d.kwhPerDay()).sum();
    }
}
