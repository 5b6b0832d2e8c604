package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.tariff.DayClass;

/** Plans the charging of a yard's year, month by month. */
public final class YardPlanner {
    private final YardInput yard;
    private final StretchPlanner stretches;
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
        this(yard, new YardNeeds(yard), memory::year);
    }

    /**
     * @param yard the yard
     * @param needs what its buses need
     * @param others years of the same yard under policies without prices
     */
    YardPlanner(YardInput yard, YardNeeds needs, Function<YardInput, YardYear> others) {
        this.yard = yard;
        this.stretches = new StretchPlanner(yard, needs);
        this.others = others;
    }

    /** The loads of all months, from January to December. */
    public List<MonthLoad> year() {
        List<MonthLoad> months = unscheduled();
        return yard.rule().policy().priced() ? leastCost(months) : months;
    }

    private List<MonthLoad> leastCost(List<MonthLoad> atFullPower) {
        return new PolicyChoice(yard, others).cheapest(yard.rule().policy() == ChargePolicy.LEAST_COST
                ? new BlockPlans(yard, atFullPower).cheapest()
                : new LeastCostYearPlan(yard, atFullPower, new YearPrices(yard, atFullPower)).dayByDay());
    }

    /** The loads of all months; with least cost at full power, before anything is scheduled. */
    List<MonthLoad> unscheduled() {
        return IntStream.range(0, Climate.MONTHS).mapToObj(this::unscheduled).toList();
    }

    /** The load of a month; with least cost at full power, before anything is scheduled. */
    MonthLoad unscheduled(int month) {
        List<StretchLoad> loads = new ArrayList<>();
        for (ServiceMonth service : yard.calendar().in(month)) {
            for (StretchKind kind : StretchKind.values()) {
                if (service.times().containsKey(kind)) {
                    loads.add(stretches.of(service, kind));
                }
            }
        }
        Map<DayClass, Double> free = yard.calendar().idle().get(month);
        boolean peakDay = loads.stream().noneMatch(s -> s.kind().extreme());
        return new MonthLoad(month, loads, MonthLoad.idle(free, yard.standbyKw(), yard.building(), month, peakDay), OptionalDouble.empty());
    }
}
