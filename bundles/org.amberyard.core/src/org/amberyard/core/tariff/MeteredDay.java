package org.amberyard.core.tariff;

import java.time.LocalDate;
import java.util.Arrays;

/**
 * What a meter counted on one day.
 *
 * @param date the day
 * @param kw mean demand of each step from midnight to midnight, kW; shared, not to be changed
 */
public record MeteredDay(LocalDate date, double[] kw) {

    /**
     * @throws IllegalArgumentException when the day has no step
     */
    public MeteredDay {
        if (kw.length == 0) {
            throw new IllegalArgumentException("load of " + date + " has no steps but must have at least one");
        }
    }

    /** The day as one of a bill. */
    LoadDay load(DayClass dayClass) {
        return new LoadDay(date.toString(), dayClass, 1, kw);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof MeteredDay day && date.equals(day.date) && Arrays.equals(kw, day.kw);
    }

    @Override
    public int hashCode() {
        return date.hashCode();
    }
}
