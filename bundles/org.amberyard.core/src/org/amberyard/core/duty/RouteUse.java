package org.amberyard.core.duty;

import java.util.List;
import java.util.stream.Stream;

/**
 * What one route takes of one vehicle type.
 *
 * @param year use in a year of service, every day by the same bus
 * @param designDays blocks of the design days: for each month that is driven its coldest and its hottest operated day, a
 *            school day and a day of the extended-year programme apart
 */
public record RouteUse(EnergyUse year, List<DesignDay> designDays) {

    /**
     * A day on which the duty must hold.
     *
     * @param month month, 0 for January
     * @param cold true for the coldest day, false for the hottest
     * @param block the bus's day; never empty
     */
    public record DesignDay(int month, boolean cold, DayBlock block) {
    }

    public RouteUse {
        designDays = List.copyOf(designDays);
    }

    /** Design days of one month and one end of the thermometer. */
    public Stream<DayBlock> days(int month, boolean cold) {
        return designDays.stream().filter(d -> d.month() == month && d.cold() == cold).map(DesignDay::block);
    }
}
