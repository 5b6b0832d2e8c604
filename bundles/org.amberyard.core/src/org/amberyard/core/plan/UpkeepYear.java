package org.amberyard.core.plan;

import java.util.List;
import java.util.Map;
import org.amberyard.core.math.CompensatedSum;
import org.amberyard.core.upkeep.FailureSpread;
import org.amberyard.core.upkeep.ShopCalendar;
import org.amberyard.core.upkeep.UpkeepCause;
import org.amberyard.core.why.Derivation;

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

    private static final List<UpkeepCause> CAUSES = List.of(UpkeepCause.values());

    public UpkeepYear {
        costs = Map.copyOf(costs);
    }

    /** How its cost comes about. */
    Derivation why() {
        return Derivation.sum("upkeep of " + record.vehicle().unit() + " at base-date prices", Derivation.MONEY,
                costs.entrySet().stream().sorted(Map.Entry.comparingByKey()).map(e -> Derivation.of(e.getKey().word(), e.getValue(),
                        Derivation.MONEY, "tasks that fall due in the year, parts and labour, times the factor by measured work orders"))
                        .toList());
    }

    /** Cost of the year at base-date prices. */
    public double cost() {
        return CompensatedSum.of(CAUSES, cause -> costs.getOrDefault(cause, 0.0));
    }
}
