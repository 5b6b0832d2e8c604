package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.charging.YardStretch;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.tariff.DayClass;

/** Plans the charging of a yard's year, month by month. */
public final class YardPlanner {
    private final YardInput yard;
    private final StretchPlanner stretches;

    public YardPlanner(YardInput yard) {
        this.yard = yard;
        this.stretches = new StretchPlanner(yard);
    }

    /** The loads of all months, from January to December. */
    public List<MonthLoad> year() {
        List<MonthLoad> months = unscheduled();
        return yard.rule().policy() == ChargePolicy.LEAST_COST ? leastCost(months) : months;
    }

    /**
     * The cheapest schedule. The programme schedules energy, not who gets a plug when; so where buses share plugs the schedules of
     * the other policies, which share them otherwise, are billed too and the cheapest that leaves least energy missing is taken.
     */
    private List<MonthLoad> leastCost(List<MonthLoad> atFullPower) {
        List<MonthLoad> scheduled = new LeastCostYearPlan(yard, atFullPower).scheduled();
        if (yard.ports().stream().mapToInt(PortUnit::plugs).sum() >= yard.buses().size()) {
            return scheduled;
        }
        return Stream.concat(Stream.of(scheduled), Stream.of(ChargePolicy.values()).filter(p -> p != ChargePolicy.LEAST_COST)
                .map(p -> new YardPlanner(yard.with(yard.rule().with(p))).year()))
                .map(loads -> new YardDetail(YardYear.of(yard, loads), loads))
                .min(Comparator.comparingDouble((YardDetail d) -> wholeMissingKwh(d.year()))
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

    /** The stretches of days of the year with the buses that stand and are to be charged, with their number in the year. */
    public List<YardStretch> stretches() {
        return unscheduled().stream().flatMap(m -> m.stretches().stream())
                .map(s -> s.charging().stretch()).toList();
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
