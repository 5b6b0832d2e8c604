package org.amberyard.core.tariff;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.temporal.TemporalAdjusters;
import java.util.List;

/** A holiday of a tariff by the rule of its date. */
public sealed interface HolidayRule {
    /**
     * Six days that tariffs in the United States most often treat like a Sunday, a Sunday's date kept on Monday; common
     * practice, no source. A tariff sheet's own list goes before it.
     */
    List<HolidayRule> USUAL_IN_US = List.of(
            new OnDate("New Year's Day", MonthDay.of(Month.JANUARY, 1), Observance.SUNDAY_ON_MONDAY),
            new OnWeekday("Memorial Day", Month.MAY, DayOfWeek.MONDAY, -1),
            new OnDate("Independence Day", MonthDay.of(Month.JULY, 4), Observance.SUNDAY_ON_MONDAY),
            new OnWeekday("Labor Day", Month.SEPTEMBER, DayOfWeek.MONDAY, 1),
            new OnWeekday("Thanksgiving Day", Month.NOVEMBER, DayOfWeek.THURSDAY, 4),
            new OnDate("Christmas Day", MonthDay.of(Month.DECEMBER, 25), Observance.SUNDAY_ON_MONDAY));

    /** Name of the holiday. */
    String name();

    /** Day on which the holiday of a year is kept; may lie in the year before or after. */
    LocalDate kept(int year);

    /**
     * A holiday of a fixed date.
     *
     * @param name name
     * @param date date; 29 February is 28 February where there is none
     * @param observance where a weekend's date is kept
     */
    record OnDate(String name, MonthDay date, Observance observance) implements HolidayRule {
        @Override
        public LocalDate kept(int year) {
            return observance.kept(date.atYear(year));
        }
    }

    /**
     * A holiday on a certain weekday of a month.
     *
     * @param name name
     * @param month month
     * @param weekday day of the week
     * @param ordinal 1 to 4 for the first to the fourth of the month, -1 for the last
     */
    record OnWeekday(String name, Month month, DayOfWeek weekday, int ordinal) implements HolidayRule {
        private static final int MOST = 4;

        /**
         * @throws IllegalArgumentException when a month need not have such a day
         */
        public OnWeekday {
            if (ordinal != -1 && (ordinal < 1 || ordinal > MOST)) {
                throw new IllegalArgumentException(
                        name + " is weekday number " + ordinal + " of its month but must be 1 to 4, or -1 for the last");
            }
        }

        @Override
        public LocalDate kept(int year) {
            return LocalDate.of(year, month, 1).with(TemporalAdjusters.dayOfWeekInMonth(ordinal, weekday));
        }
    }
}
