package org.amberyard.core.duty;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What one route takes of one vehicle type.
 *
 * @param year use in a year of service, every day by the same bus
 * @param designDays days on which the duty must hold: for each month that is driven its coldest and its hottest operated day,
 *            a school day and a day of the extended-year programme apart; none for a bus with an engine
 * @param normalDays the days that make up the year, likewise apart; none for a bus with an engine
 */
public record RouteUse(EnergyUse year, List<DesignDay> designDays, List<NormalDay> normalDays) {

    /**
     * An average day of a month.
     *
     * @param month month, 0 for January
     * @param extendedYear true for a day of the extended-year programme
     * @param days days like it in the month
     * @param block the bus's day
     * @param monthUse what all of them take; less than the day so many times where a run is driven on fewer days
     */
    public record NormalDay(int month, boolean extendedYear, int days, DayBlock block, EnergyUse monthUse) {
    }

    /**
     * A day on which the duty must hold.
     *
     * @param month month, 0 for January
     * @param extendedYear true for a day of the extended-year programme
     * @param cold true for the coldest day, false for the hottest
     * @param overnight the bus's day when it is plugged in at night only
     * @param midday the same when it is plugged in between runs too
     */
    public record DesignDay(int month, boolean extendedYear, boolean cold, DayBlock overnight, DayBlock midday) {

        /** The day under a habit. */
        public DayBlock block(boolean chargedMidday) {
            return chargedMidday ? midday : overnight;
        }
    }

    public RouteUse {
        designDays = List.copyOf(designDays);
        normalDays = List.copyOf(normalDays);
    }

    /** The average day of one month, of school or of the extended-year programme; empty when the route is not driven then. */
    public Optional<NormalDay> normalDay(int month, boolean extendedYear) {
        return normalDays.stream().filter(d -> d.month() == month && d.extendedYear() == extendedYear).findFirst();
    }

    /** The coldest or the hottest day of one month, of school or of the extended-year programme. */
    public Optional<DesignDay> designDay(int month, boolean extendedYear, boolean cold) {
        return designDays.stream().filter(d -> d.month() == month && d.extendedYear() == extendedYear && d.cold() == cold)
                .findFirst();
    }

    /** Design days of one month and one end of the thermometer under a habit. */
    public Stream<DayBlock> days(int month, boolean cold, boolean chargedMidday) {
        return designDays.stream().filter(d -> d.month() == month && d.cold() == cold).map(d -> d.block(chargedMidday));
    }
}
