package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.PortMix;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.PortCurve;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.Unit;
import org.amberyard.core.yard.YardYear;
import org.amberyard.report.LastYears.LastYear;
import org.amberyard.report.ResultRows.OfYear;

/** Tables that set a yard beside what it might be: other policies, other tariffs, other numbers of ports. */
final class ComparisonTables {
    private ComparisonTables() {
    }

    /** The yard of a plan's last year under something else. */
    record OfOther(OfYear at, YardYear yard, boolean inUse) {
        static List<OfOther> policies(StudyResult result) {
            List<OfOther> rows = new ArrayList<>();
            for (OfYear at : lastYears(result)) {
                ChargePolicy used = YardRows.yard(at).input().rule().policy();
                at.plan().yardComparison().policies()
                        .forEach(y -> rows.add(new OfOther(at, y, y.input().rule().policy() == used)));
            }
            return rows;
        }

        static List<OfOther> tariffs(StudyResult result) {
            List<OfOther> rows = new ArrayList<>();
            for (OfYear at : lastYears(result)) {
                List<YardYear> tariffs = at.plan().yardComparison().tariffs();
                IntStream.range(0, tariffs.size()).forEach(t -> rows.add(new OfOther(at, tariffs.get(t), t == 0)));
            }
            return rows;
        }

        private static List<OfYear> lastYears(StudyResult result) {
            return YardRows.years(result).stream().filter(r -> r.year() == result.input().years() - 1).toList();
        }

        int busesShort() {
            return (int) yard.months().stream().flatMap(m -> m.shortfalls().stream()).map(YardYear.Shortfall::bus).distinct()
                    .count();
        }

        double missingKwh() {
            return yard.neededKwh() - yard.yardKwh();
        }

        String used() {
            return inUse ? "yes" : "no";
        }

        OptionalDouble perKwh() {
            return yard.yardKwh() > 0 ? OptionalDouble.of(yard.parts().total() / yard.yardKwh()) : OptionalDouble.empty();
        }
    }

    static TableDefinition<OfOther> policies() {
        TableDefinition<OfOther> table = new TableDefinition<>("policies", "Charging policies beside each other", OfOther::policies);
        return bill(of(table).text("policy", "Policy", "How the yard charges.", r -> r.yard().input().rule().policy().label())
                .text("in_use", "Used by the study", "Whether the study charges so: yes or no.", OfOther::used))
                .number("swaps", "Plug swaps", ColumnUnit.COUNT, "How often a person moves a plug in the year.",
                        r -> r.yard().swaps())
                .count("buses_short", "Buses short", "Buses that on some day leave without the charge that they need.",
                        OfOther::busesShort)
                .number("missing", "Missing", Unit.KILOWATT_HOUR,
                        "Energy at the meter that the yard cannot bring in the year; a bill without it is low for that reason.",
                        OfOther::missingKwh);
    }

    static TableDefinition<OfOther> tariffs() {
        TableDefinition<OfOther> table = new TableDefinition<>("tariffs", "Tariffs beside each other", OfOther::tariffs);
        return bill(of(table).text("tariff", "Tariff", "Rate of the supplier, each charged by the study's policy.",
                r -> r.yard().input().metering().tariff().name())
                .text("in_use", "Used by the study", "Whether the study is on this tariff: yes or no.", OfOther::used)
                .text("shared", "Shared meter", "Whether the building is behind the same meter: yes or no; the bill is then that "
                        + "with charging less that without.", r -> r.yard().input().metering().shared() ? "yes" : "no")
                .count("contract_year", "Prices of contract year", "Year of the contract whose prices are billed, 1 for the first; "
                        + "once the tariff stays the same, the first year from which it does.",
                        r -> r.yard().input().contractYear()))
                .optional("price", "Average price", Unit.MONEY_PER_KWH, "Bill over energy; no figure without energy.",
                        OfOther::perKwh);
    }

    private static TableDefinition<OfOther> of(TableDefinition<OfOther> table) {
        return table.text("plan", "Plan", "Name of the plan.", r -> r.at().plan().name())
                .year("year", "Year", "Last year of the plan.", r -> r.at().calendarYear());
    }

    private static TableDefinition<OfOther> bill(TableDefinition<OfOther> table) {
        return table.money("energy", "Energy charges", "What follows the energy, base-date prices.", r -> r.yard().parts().energy())
                .money("demand", "Demand charges", "What follows the demand, base-date prices.", r -> r.yard().parts().demand())
                .money("fixed", "Fixed charges", "What follows neither, base-date prices.", r -> r.yard().parts().fixed())
                .money("total", "Bill", "The year's bill for charging, base-date prices.", r -> r.yard().parts().total())
                .number("charging_peak", "Demand of charging", Unit.KILOWATT,
                        "Highest demand of charging, heat and standby in the year.", r -> r.yard().yardPeakKw())
                .number("service_peak", "Demand of the service", Unit.KILOWATT,
                        "Highest demand behind the service, the building included.", r -> r.yard().servicePeakKw());
    }

    /** The cheapest ports of a number that have every bus ready. */
    record OfMix(LastYear at, PortCurve curve, PortMix mix) {
        static List<OfMix> all(List<LastYear> years) {
            List<OfMix> rows = new ArrayList<>();
            for (LastYear year : years) {
                if (!year.input().buses().isEmpty()) {
                    PortCurve curve = PortCurve.of(year.result().input(), year.input());
                    curve.byNumber().forEach(m -> rows.add(new OfMix(year, curve, m)));
                }
            }
            return rows;
        }

        String ports() {
            return IntStream.range(0, mix.counts().size()).filter(o -> mix.counts().get(o) > 0)
                    .mapToObj(o -> mix.counts().get(o) + " × " + curve.options().get(o).port().name())
                    .collect(Collectors.joining(", "));
        }

        String cheapest() {
            return curve.cheapest().filter(mix::equals).isPresent() ? "yes" : "no";
        }

        PlanResult plan() {
            return at.plan();
        }
    }

    static TableDefinition<OfMix> portCurve(LastYears years) {
        return new TableDefinition<>("port_curve", "Ports that have every bus ready, by number", r -> OfMix.all(years.of(r)))
                .text("plan", "Plan", "Name of the plan; it has no rows where no number of ports on offer has every bus ready.",
                        r -> r.plan().name())
                .year("year", "Year", "Last year of the plan, whose buses are charged by the study's policy.",
                        r -> r.at().at().calendarYear())
                .count("ports", "Ports", "Number of ports. Numbers left out do not have every bus ready on every day, whatever the "
                        + "types.", r -> r.mix().ports())
                .text("mix", "Types", "The cheapest types of that number.", OfMix::ports)
                .number("connected_power", "Connected power", Unit.KILOWATT, "All of these ports at full power.",
                        r -> r.curve().connectedKw(r.mix()))
                .money("port_cost", "Ports per year", "Capital recovery of hardware and installation at the real discount rate, and "
                        + "fees; base-date money, site works left out.", r -> r.mix().portCost())
                .money("swap_cost", "Swaps per year", "Pay for moving plugs.", r -> r.mix().swapCost())
                .money("cost", "Cost per year", "Both together.", r -> r.mix().cost())
                .text("cheapest", "Cheapest", "Whether no other number costs less: yes or no.", OfMix::cheapest);
    }
}
