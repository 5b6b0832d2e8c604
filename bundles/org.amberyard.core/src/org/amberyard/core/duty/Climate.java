package org.amberyard.core.duty;

import java.util.List;

/**
 * Climate of the service area.
 *
 * @param elevationM elevation, m
 * @param months weather of the months from January to December
 */
public record Climate(double elevationM, List<MonthWeather> months) {

    /** Months in a year. */
    public static final int MONTHS = 12;

    /**
     * Weather of one month.
     *
     * @param normal an average day
     * @param coldest the coldest day on which buses ran
     * @param hottest the hottest day on which buses ran
     */
    public record MonthWeather(DayTemperatures normal, DayTemperatures coldest, DayTemperatures hottest) {
    }

    public Climate {
        if (months.size() != MONTHS) {
            throw new IllegalArgumentException("A climate needs 12 months but has " + months.size());
        }
        months = List.copyOf(months);
    }
}
