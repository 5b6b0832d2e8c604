package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.Unit;
import org.amberyard.core.yard.YardYear;
import org.amberyard.report.ResultRows.OfYear;

/** Tables that set a yard beside what it might be under other policies and on other tariffs. */
final class ComparisonTables {
    private ComparisonTables() {
    }

    /** The yard of a plan's year under something else. */
    record OfOther(OfYear at, YardYear yard, boolean inUse) {
        static List<OfOther> tariffs(StudyResult result) {
            List<OfOther> rows = new ArrayList<>();
            for (OfYear at : YardRows.years(result).stream().filter(r -> r.year() == result.input().years() - 1).toList()) {
                List<YardYear> tariffs = at.plan().yardComparison().tariffs();
                IntStream.range(0, tariffs.size()).forEach(t -> rows.add(new OfOther(at, tariffs.get(t), t == 0)));
            }
            return rows;
        }

        String used() {
            return inUse ? "yes" : "no";
        }

        OptionalDouble perKwh() {
            return yard.yardKwh() > 0 ? OptionalDouble.of(yard.parts().total() / yard.yardKwh()) : OptionalDouble.empty();
        }
    }

    /** The yard of a plan's year under a policy, beside the others. */
    record OfPolicy(OfYear at, YardYear yard, List<YardYear> all) {
        static List<OfPolicy> lastYears(StudyResult result) {
            return YardRows.years(result).stream().filter(r -> r.year() == result.input().years() - 1)
                    .flatMap(at -> rows(at, at.plan().yardComparison().policies(at.year())).stream()).toList();
        }

        static List<OfPolicy> years(StudyResult result, Progress progress) {
            List<OfPolicy> rows = new ArrayList<>();
            List<PlanResult> plans = result.plans();
            for (int place = 0; place < plans.size(); place++) {
                PlanResult plan = plans.get(place);
                List<OfYear> charging = YardRows.years(result).stream().filter(at -> at.plan() == plan).toList();
                if (!charging.isEmpty()) {
                    List<List<YardYear>> years = plan.yardComparison().policiesByYear(progress.part(place, plans.size()));
                    charging.forEach(at -> rows.addAll(rows(at, years.get(at.year()))));
                }
            }
            return rows;
        }

        private static List<OfPolicy> rows(OfYear at, List<YardYear> policies) {
            return policies.stream().map(y -> new OfPolicy(at, y, policies)).toList();
        }

        String policy() {
            return yard.input().rule().policy().label();
        }

        String used() {
            return yard.input().rule().policy() == YardRows.yard(at).input().rule().policy() ? "yes" : "no";
        }

        double aboveLeastCost() {
            return yard.parts().total()
                    - all.stream().filter(y -> y.input().rule().policy() == ChargePolicy.LEAST_COST).findFirst().orElseThrow().parts().total();
        }

        int busesShort() {
            return (int) yard.months().stream().flatMap(m -> m.shortfalls().stream()).map(YardYear.Shortfall::bus).distinct()
                    .count();
        }
    }

    static TableDefinition<OfPolicy> policies() {
        return policies(new TableDefinition<>("policies", "Charging policies beside each other", OfPolicy::lastYears),
                "Last year of the plan.");
    }

    static TableDefinition<OfPolicy> policiesByYear(Progress progress) {
        return policies(new TableDefinition<>("policies_by_year", "Charging policies by year", r -> OfPolicy.years(r, progress)),
                "Year in which the plan has electric buses or ports.");
    }

    private static TableDefinition<OfPolicy> policies(TableDefinition<OfPolicy> table, String year) {
        table.text("plan", "Plan", "Name of the plan.", r -> r.at().plan().name())
                .year("year", "Year", year, r -> r.at().calendarYear())
                .text("policy", "Policy", "How the yard charges. Least cost day by day is charged by a controller that knows one day at "
                        + "a time; what it pays more than least cost is what foresight is worth.", OfPolicy::policy)
                .heads()
                .text("in_use", "Used by the study", "Whether the study charges so: yes or no.", OfPolicy::used);
        return bill(table, OfPolicy::yard)
                .money("above_least_cost", "Above least cost", "Bill less that of least cost in the same year.",
                        OfPolicy::aboveLeastCost)
                .number("swaps", "Plug swaps", ColumnUnit.COUNT, "How often a person moves a plug in the year.",
                        r -> r.yard().swaps())
                .count("buses_short", "Buses short", "Buses that on some day leave without the charge that they need.",
                        OfPolicy::busesShort)
                .number("missing", "Missing", Unit.KILOWATT_HOUR,
                        "Energy at the meter that the yard cannot bring in the year; a bill without it is low for that reason.",
                        r -> r.yard().totalMissingKwh());
    }

    static TableDefinition<OfOther> tariffs() {
        TableDefinition<OfOther> table = new TableDefinition<>("tariffs", "Tariffs beside each other", OfOther::tariffs);
        table.text("plan", "Plan", "Name of the plan.", r -> r.at().plan().name())
                .year("year", "Year", "Last year of the plan.", r -> r.at().calendarYear())
                .text("tariff", "Tariff", "Rate of the supplier, each charged by the study's policy.",
                        r -> r.yard().input().metering().tariff().name())
                .heads()
                .text("in_use", "Used by the study", "Whether the study is on this tariff: yes or no.", OfOther::used)
                .text("shared", "Shared meter", "Whether the building is behind the same meter: yes or no; the bill is then that "
                        + "with charging less that without.", r -> r.yard().input().metering().shared() ? "yes" : "no")
                .count("contract_year", "Prices of contract year", "Year of the contract whose prices are billed, 1 for the first; "
                        + "once the tariff stays the same, the first year from which it does.",
                        r -> r.yard().input().contractYear());
        return bill(table, OfOther::yard)
                .optional("price", "Average price", Unit.MONEY_PER_KWH, "Bill over energy; no figure without energy.",
                        OfOther::perKwh);
    }

    private static <R> TableDefinition<R> bill(TableDefinition<R> table, Function<R, YardYear> yard) {
        return table.money("energy", "Energy charges", "What follows the energy, base-date prices.",
                r -> yard.apply(r).parts().energy())
                .money("demand", "Demand charges", "What follows the demand, base-date prices.", r -> yard.apply(r).parts().demand())
                .money("fixed", "Fixed charges", "What follows neither, base-date prices.", r -> yard.apply(r).parts().fixed())
                .money("total", "Bill", "The year's bill for charging, base-date prices.", r -> yard.apply(r).parts().total())
                .number("charging_peak", "Demand of charging", Unit.KILOWATT,
                        "Highest demand of charging, heat and standby in the year.", r -> yard.apply(r).yardPeakKw())
                .number("service_peak", "Demand of the service", Unit.KILOWATT,
                        "Highest demand behind the service, the building included.", r -> yard.apply(r).servicePeakKw());
    }
}
