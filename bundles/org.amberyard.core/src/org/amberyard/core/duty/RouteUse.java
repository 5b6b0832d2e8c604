package org.amberyard.core.duty;

import java.util.List;

/**
 * What one route takes of one vehicle type.
 *
 * @param year use in a year of service, every day by the same bus
 * @param coldestDays block of the coldest operated day in each month from January to December
 * @param hottestDays block of the hottest operated day in each month
 */
public record RouteUse(EnergyUse year, List<DayBlock> coldestDays, List<DayBlock> hottestDays) {

    public RouteUse {
        coldestDays = List.copyOf(coldestDays);
        hottestDays = List.copyOf(hottestDays);
    }
}
