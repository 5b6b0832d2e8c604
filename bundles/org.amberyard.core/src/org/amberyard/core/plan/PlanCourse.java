package org.amberyard.core.plan;

import java.util.List;
import org.amberyard.core.yard.YardYear;

/**
 * What happens in a plan, whatever it costs.
 *
 * @param fleet the fleet over the years
 * @param upkeep upkeep of each bus-year at base-date prices, in the order of the fleet's years
 * @param ports its ports over the years
 * @param yards the yard by year
 */
record PlanCourse(FleetHistory fleet, List<UpkeepYear> upkeep, PortFleet ports, List<YardYear> yards) {

    PlanCourse {
        upkeep = List.copyOf(upkeep);
        yards = List.copyOf(yards);
    }
}
