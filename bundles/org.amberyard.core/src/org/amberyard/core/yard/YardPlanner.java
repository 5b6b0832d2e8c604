package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.tariff.DayClass;

/** Plans the charging of a yard's year, month by month. */
public final class YardPlanner {
    private final YardInput yard;
    private final StretchPlanner stretches;
    private final Function<ChargePolicy, YardDetail> others;

    /** Plans a yard by its policy. */
    public YardPlanner(YardInput yard) {
        this(yard, new YardNeeds(yard), policy -> YardDetail.of(yard.with(yard.rule().with(policy))));
    }

    /**
     * @param yard the yard
     * @param needs what its buses need
     * @param others the same yard under other policies
     */
    YardPlanner(YardInput yard, YardNeeds needs, Function<ChargePolicy, YardDetail> others) {
        this.yard = yard;
        this.stretches = new StretchPlanner(yard, needs);
        this.others = others;
    }

    /** The loads of all months, from January to December. */
    public List<MonthLoad> year() {
        List<MonthLoad> months = unscheduled();
        return yard.rule().policy().priced() ? leastCost(months) : months;
    }

    /**
     * The cheapest schedule. The programme schedules energy, not who gets a plug when; so where buses share plugs the schedules of
     * the other policies, which share them otherwise, are billed too and the cheapest that leaves least energy missing is taken.
     * Day by day nobody knows which will be the cheapest: there another is taken only where it leaves less missing.
     */
    private List<MonthLoad> leastCost(List<MonthLoad> atFullPower) {
        LeastCostYearPlan plan = new LeastCostYearPlan(yard, atFullPower);
        boolean foresight = yard.rule().policy() == ChargePolicy.LEAST_COST;
        List<MonthLoad> scheduled = foresight ? plan.withForesight() : plan.dayByDay();
        if (yard.ports().stream().mapToInt(PortUnit::plugs).sum() >= yard.buses().size()) {
            return scheduled;
        }
        YardDetail own = new YardDetail(YardYear.of(yard, scheduled), scheduled);
        Stream<YardDetail> unpriced = Stream.of(ChargePolicy.values()).filter(p -> !p.priced()).map(others);
        return Stream.concat(Stream.of(own), unpriced).min(Comparator.comparingDouble((YardDetail d) -> wholeMissingKwh(d.year()))
                .thenComparing(d -> foresight || d != own)
                .thenComparingDouble(d -> d.year().parts().total())).orElseThrow().loads();
    }

    /** Missing energy in whole kWh, so that rounding does not decide. */
    private static double wholeMissingKwh(YardYear year) {
        return Math.rint(year.totalMissingKwh());
    }

    /** The loads of all months; with least cost at full power, before anything is scheduled. */
    List<MonthLoad> unscheduled() {
        return IntStream.range(0, Climate.MONTHS).mapToObj(this::policyMonth).toList();
    }

    private MonthLoad policyMonth(int month) {
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
        return new MonthLoad(month, loads, MonthLoad.idle(free, yard.standbyKw(), yard.building(), month, peakDay), 0);
    }
}
