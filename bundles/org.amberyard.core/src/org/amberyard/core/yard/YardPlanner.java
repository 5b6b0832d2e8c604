package org.amberyard.core.yard;

import java.util.List;
import java.util.function.Function;
import org.amberyard.core.charging.ChargePolicy;

/** Plans the charging of a yard's year, month by month. */
public final class YardPlanner {
    private final YardInput yard;
    private final LoadMemory loads;
    private final Function<YardInput, YardYear> others;

    /** Plans a yard by its policy. */
    public YardPlanner(YardInput yard) {
        this(yard, new YardMemory());
    }

    /**
     * Plans a yard by its policy.
     *
     * @param memory knows the same yard under other policies
     */
    YardPlanner(YardInput yard, YardMemory memory) {
        this(yard, memory.loads(), memory::year);
    }

    /**
     * @param yard the yard
     * @param loads loads before prices schedule anything
     * @param others years of the same yard under policies without prices
     */
    YardPlanner(YardInput yard, LoadMemory loads, Function<YardInput, YardYear> others) {
        this.yard = yard;
        this.loads = loads;
        this.others = others;
    }

    /** The loads of all months, from January to December. */
    public List<MonthLoad> year() {
        return yard.rule().policy().priced() ? leastCost(loads.year(yard)) : unscheduled();
    }

    private List<MonthLoad> leastCost(List<MonthLoad> atFullPower) {
        return new PolicyChoice(yard, loads, others).cheapest(yard.rule().policy() == ChargePolicy.LEAST_COST
                ? new BlockPlans(yard, atFullPower, loads).cheapest()
                : new LeastCostYearPlan(yard, atFullPower, new YearPrices(yard, atFullPower)).dayByDay());
    }

    /** The loads of all months; with least cost at full power, before anything is scheduled. */
    List<MonthLoad> unscheduled() {
        return loads.unscheduled(yard).year();
    }
}
