package org.amberyard.core.tariff;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.core.units.MonthNames;

/**
 * What a meter counts in a month. Days have 24 hours; the changes to and from summer time are left out.
 *
 * @param month month, 0 for January
 * @param days kinds of days of the month
 */
public record MeterMonth(int month, List<LoadDay> days) {

    private static final int MONTHS = 12;

    /**
     * @throws IllegalArgumentException when the month is not one of the twelve
     */
    public MeterMonth {
        days = List.copyOf(days);
        MonthNames.require(month);
    }

    /** Highest demand, kW. */
    public double peakKw() {
        return days.stream().filter(d -> d.days() > 0).flatMapToDouble(d -> Arrays.stream(d.kw())).max().orElse(0);
    }

    /** Number of days. */
    public double dayCount() {
        return days.stream().mapToDouble(LoadDay::days).sum();
    }

    /** The month with further days. */
    MeterMonth with(MeterMonth more) {
        return new MeterMonth(month, Stream.concat(days.stream(), more.days.stream()).toList());
    }

    /** Energy of the month, kWh. */
    public double kwh() {
        return days.stream().mapToDouble(d -> d.days() * d.kwhPerDay()).sum();
    }

    /**
     * @throws IllegalArgumentException when months do not follow one another
     */
    static void requireConsecutive(List<MeterMonth> months) {
        for (int m = 1; m < months.size(); m++) {
            int before = months.get(m - 1).month();
            int month = months.get(m).month();
            if (month != (before + 1) % MONTHS) {
                throw new IllegalArgumentException(
                        MonthNames.full(month) + " comes after " + MonthNames.full(before)
                                + " but months must follow one another");
            }
        }
    }
}
