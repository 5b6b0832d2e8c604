package org.amberyard.charts;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.tariff.BillParts;
import org.amberyard.core.yard.YardComparison;
import org.amberyard.core.yard.YardMemory;
import org.amberyard.core.yard.YardYear;

/** What charging a year would cost under each policy, and whether all buses leave ready. */
final class PolicyCosts {

    /**
     * A year under a policy.
     *
     * @param policy the policy
     * @param parts money for charging; without what the building pays alone where they share a meter
     * @param peakKw highest demand of charging, heat and standby, kW
     * @param shortBuses buses that leave short on some day, by name
     * @param missingKwh energy that the yard cannot bring, kWh
     */
    record Cost(ChargePolicy policy, BillParts parts, double peakKw, List<String> shortBuses, double missingKwh) {
    }

    private PolicyCosts() {
    }

    /** Costs of a plan's year; that of the last year is known from the results. */
    static List<Cost> of(PlanResult plan, int year) {
        return of(year == plan.yards().size() - 1 ? plan.yardComparison()
                : YardComparison.of(plan.yards().get(year).input(), List.of(), new YardMemory()));
    }

    static List<Cost> of(YardComparison comparison) {
        List<Cost> costs = new ArrayList<>();
        for (ChargePolicy policy : ChargePolicy.values()) {
            costs.add(of(policy, comparison.under(policy)));
        }
        return costs;
    }

    private static Cost of(ChargePolicy policy, YardYear year) {
        List<String> shortBuses = year.months().stream().flatMap(m -> m.shortfalls().stream()).map(YardYear.Shortfall::bus)
                .distinct().sorted().map(b -> year.input().buses().get(b).name()).toList();
        return new Cost(policy, year.parts(), year.yardPeakKw(), shortBuses, year.totalMissingKwh());
    }
}
