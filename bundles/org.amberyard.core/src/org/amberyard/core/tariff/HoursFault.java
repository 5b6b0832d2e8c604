package org.amberyard.core.tariff;

import java.util.List;
import java.util.stream.Collectors;
import org.amberyard.core.tariff.TariffPeriod.Hours;
import org.amberyard.core.units.MonthNames;

/**
 * Hours that no energy charge covers, or more than one.
 *
 * @param contractYear first contract year in which it is so
 * @param days kinds of days
 * @param months months in order, 0 for January
 * @param hours hours of the day
 * @param charges names of the charges that cover the hours
 */
public record HoursFault(int contractYear, List<DayClass> days, List<Integer> months, Hours hours,
        List<String> charges) {

    public HoursFault {
        days = List.copyOf(days);
        months = List.copyOf(months);
        charges = List.copyOf(charges);
    }

    /** Words such as "weekday in January 18:00–20:00 covered twice, by On-peak energy and Mid-peak energy". */
    public String message() {
        String kinds = days.stream().map(DayClass::label).collect(Collectors.joining(", "));
        String contract = contractYear == 1 ? "" : "in contract year " + contractYear + ", ";
        return contract + kinds + " in " + MonthNames.of(months) + " " + ClockTime.of(hours.fromMin()) + "–"
                + ClockTime.of(hours.toMin()) + " " + coverage();
    }

    private String coverage() {
        if (charges.isEmpty()) {
            return "not covered by an energy charge";
        }
        String times = charges.size() == 2 ? "twice" : charges.size() + " times";
        return "covered " + times + ", by " + String.join(" and ", charges);
    }
}
