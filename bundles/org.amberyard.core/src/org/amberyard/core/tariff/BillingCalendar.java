package org.amberyard.core.tariff;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Kinds of days of a calendar year by the holidays of a tariff. */
public final class BillingCalendar {
    private final int year;
    private final Set<LocalDate> holidays;

    /** Calendar of a year. */
    public BillingCalendar(int year, List<HolidayRule> holidays) {
        this.year = year;
        this.holidays = IntStream.rangeClosed(year - 1, year + 1)
                .mapToObj(y -> holidays.stream().map(h -> h.kept(y)))
                .flatMap(kept -> kept)
                .collect(Collectors.toUnmodifiableSet());
    }

    /**
     * Kind of a day.
     *
     * @throws IllegalArgumentException when the day is not of the year
     */
    public DayClass dayClass(LocalDate date) {
        if (date.getYear() != year) {
            throw new IllegalArgumentException(date + " is not in " + year);
        }
        if (holidays.contains(date)) {
            return DayClass.HOLIDAY;
        }
        return date.getDayOfWeek() == DayOfWeek.SATURDAY ? DayClass.SATURDAY
                : date.getDayOfWeek() == DayOfWeek.SUNDAY ? DayClass.SUNDAY : DayClass.WEEKDAY;
    }

    /**
     * Number of days of each kind in a month; every kind is named.
     *
     * @param month month, 0 for January
     */
    public Map<DayClass, Integer> days(int month) {
        Map<DayClass, Integer> days = new EnumMap<>(DayClass.class);
        for (DayClass kind : DayClass.values()) {
            days.put(kind, 0);
        }
        YearMonth of = YearMonth.of(year, month + 1);
        for (int day = 1; day <= of.lengthOfMonth(); day++) {
            days.merge(dayClass(of.atDay(day)), 1, Integer::sum);
        }
        return days;
    }
}
