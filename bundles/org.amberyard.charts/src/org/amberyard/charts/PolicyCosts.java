package org.amberyard.charts;

import java.util.List;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.tariff.BillParts;
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

    /** Costs of a plan's year. */
    static List<Cost> of(PlanResult plan, int year) {
        return of(plan.yardComparison().policies(year));
    }

    /** Costs of a year under each policy. */
    static List<Cost> of(List<YardYear> policies) {
        return policies.stream().map(PolicyCosts::of).toList();
    }

    private static Cost of(YardYear year) {
        List<String> shortBuses = year.months().stream().flatMap(m -> m.shortfalls().stream()).map(YardYear.Shortfall::bus)
                .distinct().sorted().map(b -> year.input().buses().get(b).name()).toList();
        return new Cost(year.input().rule().policy(), year.parts(), year.yardPeakKw(), shortBuses, year.totalMissingKwh());
    }
}
