package org.amberyard.core.plan;

import java.util.OptionalInt;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.yard.BuildingLoad;
import org.amberyard.core.yard.SwapTimes;

/**
 * How a yard charges, and beside what.
 *
 * @param rule charging policy
 * @param stepMin length of a step of load, minutes; divides the hour
 * @param building load of the building
 * @param swaps when a person is there to move plugs
 * @param swapCost cost of moving a plug once, base-date money
 * @param battery what a battery beside the building would cost
 * @param calendarYear number of the fiscal year whose calendar all years have; empty for the base year
 */
public record ChargingRules(ChargeRule rule, int stepMin, BuildingLoad building, SwapTimes swaps, double swapCost,
        BatteryOffer battery, OptionalInt calendarYear) {
    private static final int DAY_MIN = 1440;
    private static final int QUARTER_HOUR_MIN = 15;

    /** Rules of a yard whose years all have the calendar of the base year. */
    public ChargingRules(ChargeRule rule, int stepMin, BuildingLoad building, SwapTimes swaps, double swapCost,
            BatteryOffer battery) {
        this(rule, stepMin, building, swaps, swapCost, battery, OptionalInt.empty());
    }

    /** Charging spread to departure in steps of a quarter of an hour beside a building of a constant load. */
    public static ChargingRules spreadBeside(double buildingKw) {
        return new ChargingRules(ChargeRule.of(ChargePolicy.SPREAD), QUARTER_HOUR_MIN,
                BuildingLoad.constant(buildingKw, DAY_MIN / QUARTER_HOUR_MIN), new SwapTimes(0, 0), 0, BatteryOffer.ASSUMED);
    }
}
