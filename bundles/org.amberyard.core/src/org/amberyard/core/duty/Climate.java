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
    public record MonthWeather(WeatherDay normal, WeatherDay coldest, WeatherDay hottest) {

        /**
         * The day at a place in the order of the month's operated days from coldest to hottest, both included, with the normal
         * day in the middle and even steps between them (common practice where only these three are known, no source).
         *
         * @param place 0 for the coldest day, 1 for the hottest
         */
        public WeatherDay inOrder(double place) {
            return place < 0.5 ? coldest.towards(normal, 2 * place) : normal.towards(hottest, 2 * place - 1);
        }
    }

    public Climate {
        if (months.size() != MONTHS) {
            throw new IllegalArgumentException("A climate needs 12 months but has " + months.size());
        }
        months = List.copyOf(months);
    }
}
