package org.amberyard.core.charging;

import java.util.List;

/**
 * A month charged at least cost.
 *
 * @param schedule the schedule and its bill
 * @param lowerBound cost below which no schedule comes, money
 * @param shortfalls sessions that cannot be ready; the schedule gives them what it can, at least cost
 */
public record LeastCostMonth(MonthSchedule schedule, double lowerBound, List<SessionShortfall> shortfalls) {

    public LeastCostMonth {
        shortfalls = List.copyOf(shortfalls);
    }

    /** True when every session gets its energy. */
    public boolean feasible() {
        return shortfalls.isEmpty();
    }

    /** How much the bill lies above the lower bound, money: rounding. */
    public double gap() {
        return schedule.cost() - lowerBound;
    }
}
