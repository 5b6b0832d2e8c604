package org.amberyard.core.tariff;

import java.time.DayOfWeek;
import java.time.LocalDate;

/** On which day a tariff keeps a holiday that falls on a weekend. */
public enum Observance {
    /** On its date. */
    ON_DATE(0, 0),
    /** A Sunday's on Monday, a Saturday's on its date. */
    SUNDAY_ON_MONDAY(0, 1),
    /** A Sunday's on Monday, a Saturday's on Friday. */
    NEAREST_WEEKDAY(-1, 1);

    private final int fromSaturday;
    private final int fromSunday;

    Observance(int fromSaturday, int fromSunday) {
        this.fromSaturday = fromSaturday;
        this.fromSunday = fromSunday;
    }

    /** The day on which a date is kept. */
    LocalDate kept(LocalDate date) {
        if (date.getDayOfWeek() == DayOfWeek.SATURDAY) {
            return date.plusDays(fromSaturday);
        }
        return date.getDayOfWeek() == DayOfWeek.SUNDAY ? date.plusDays(fromSunday) : date;
    }
}
