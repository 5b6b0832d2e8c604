package org.amberyard.core.tariff;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.units.MonthNames;

/**
 * When a price of a tariff applies.
 *
 * @param months months of its season, 0 for January
 * @param days kinds of days
 * @param hours hours of those days
 */
public record TariffPeriod(Set<Integer> months, Set<DayClass> days, List<Hours> hours) {
    private static final int MONTHS = 12;
    private static final int DAY_MIN = 1440;

    /**
     * Hours of a day.
     *
     * @param fromMin start, minutes after midnight, included
     * @param toMin end, minutes after midnight, not included; hours over midnight end before they start, and the part after
     *            midnight belongs to the day on which it falls
     */
    public record Hours(int fromMin, int toMin) {

        /** The whole day. */
        public static final Hours ALL_DAY = new Hours(0, DAY_MIN);

        /**
         * @throws IllegalArgumentException when a minute is not of the day, or the hours end as they start
         */
        public Hours {
            if (fromMin < 0 || fromMin >= DAY_MIN || toMin < 0 || toMin > DAY_MIN || fromMin == toMin) {
                throw new IllegalArgumentException("hours from minute " + fromMin + " to " + toMin
                        + " must lie between 0 and 1440 and not end as they start");
            }
        }

        /** True when a minute after midnight lies within. */
        public boolean contains(double minute) {
            return fromMin < toMin ? fromMin <= minute && minute < toMin : minute >= fromMin || minute < toMin;
        }
    }

    /** All hours of the year. */
    public static final TariffPeriod ALWAYS = new TariffPeriod(
            IntStream.range(0, MONTHS).boxed().collect(Collectors.toSet()), EnumSet.allOf(DayClass.class),
            List.of(Hours.ALL_DAY));

    /**
     * @throws IllegalArgumentException when a month is not one of the twelve
     */
    public TariffPeriod {
        months = Set.copyOf(months);
        days = Set.copyOf(days);
        hours = List.copyOf(hours);
        months.forEach(MonthNames::require);
    }

    /** True when the period covers a minute of a kind of day in a month. */
    public boolean covers(int month, DayClass day, double minute) {
        return months.contains(month) && days.contains(day) && hours.stream().anyMatch(h -> h.contains(minute));
    }
}
