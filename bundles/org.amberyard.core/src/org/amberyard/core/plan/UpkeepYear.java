package org.amberyard.core.plan;

import java.util.Map;
import org.amberyard.core.upkeep.FailureSpread;
import org.amberyard.core.upkeep.ShopCalendar;
import org.amberyard.core.upkeep.UpkeepCause;

/**
 * Upkeep of one place in the fleet in one year.
 *
 * @param record the bus's year
 * @param costs cost by cause at base-date prices, calibration included; causes without cost are left out
 * @param calendar the tasks; empty for a type without tasks, which costs by its rate
 * @param factor measured over modelled cost of its type, by which the costs are multiplied; 1 where nothing was measured
 * @param failures what failures come to, calibration included, and how far that may miss
 */
public record UpkeepYear(VehicleYear record, Map<UpkeepCause, Double> costs, ShopCalendar calendar, double factor,
        FailureSpread failures) {

    public UpkeepYear {
        costs = Map.copyOf(costs);
    }

    /** Cost of the year at base-date prices. */
    public double cost() {
        return costs.entrySet().stream().sorted(Map.Entry.comparingByKey()).mapToDouble(Map.Entry::getValue).sum();
    }
}
