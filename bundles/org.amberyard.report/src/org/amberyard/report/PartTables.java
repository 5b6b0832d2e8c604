package org.amberyard.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.tariff.BillComponent;
import org.amberyard.core.tariff.BillYear;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.units.Unit;
import org.amberyard.core.yard.YardComparison;
import org.amberyard.core.yard.YardYear;
import org.amberyard.report.ResultRows.OfYear;

/** Tables of the last year of each plan under every charging policy and on every tariff, by the parts of the bill as utilities print them. */
final class PartTables {
    private static final int MOST_MISSED = 8;
    private static final String CAUTION = "A cap counts for the size of the service only where a listed energy-management device keeps it; local code and "
            + "licensed practice decide.";

    private PartTables() {
    }

    /** The yard of a plan's last year under something else. */
    record OfYard(OfYear at, YardYear yard, boolean inUse) {

        static List<OfYard> policies(StudyResult result) {
            return lastYears(result).flatMap(at -> at.plan().yardComparison().policies(at.year()).stream()
                    .map(y -> new OfYard(at, y, y.input().rule().policy() == YardRows.yard(at).input().rule().policy()))).toList();
        }

        static List<OfYard> tariffs(StudyResult result) {
            return lastYears(result).flatMap(OfYard::tariffs).toList();
        }

        private static Stream<OfYard> tariffs(OfYear at) {
            YardComparison comparison = at.plan().yardComparison();
            List<YardYear> tariffs = comparison.tariffs();
            return IntStream.range(0, tariffs.size()).mapToObj(t -> new OfYard(at, tariffs.get(t), t == 0));
        }

        private static Stream<OfYear> lastYears(StudyResult result) {
            return YardRows.years(result).stream().filter(r -> r.year() == result.input().years() - 1);
        }

        /** What charging adds to a part of the year's bills. */
        double part(BillComponent part) {
            return part(yard.bills(), part) - yard.withoutCharging().map(w -> part(w, part)).orElse(0.0);
        }

        private static double part(BillYear year, BillComponent part) {
            return year.bills().stream().mapToDouble(b -> b.amount(part)).sum();
        }

        /** Buses that leave without their charge, each with the month and days in which it is first. */
        String missed() {
            List<String> missed = yard.months().stream().flatMap(m -> m.shortfalls().stream().map(s -> yard.input().buses().get(s.bus()).name() + " ("
                    + MonthNames.full(m.month()) + ", " + s.stretch() + ")")).toList();
            List<String> first = missed.stream().collect(Collectors.toMap(w -> w.substring(0, w.indexOf(" (")), w -> w, (one, other) -> one,
                    LinkedHashMap::new)).values().stream().toList();
            return first.size() <= MOST_MISSED ? String.join(", ", first)
                    : String.join(", ", first.subList(0, MOST_MISSED)) + " and " + (first.size() - MOST_MISSED) + " more";
        }
    }

    static TableDefinition<OfYard> policies() {
        TableDefinition<OfYard> table = new TableDefinition<OfYard>("policy_bills", "Charging policies by part of the bill", OfYard::policies)
                .text("plan", "Plan", "Name of the plan.", r -> r.at().plan().name())
                .year("year", "Year", "Last year of the plan.", r -> r.at().calendarYear())
                .text("policy", "Policy", "How the yard charges: unmanaged (at once), delayed (at a set time), managed (spread, least cost), or capped, where "
                        + "the depot has a cap. " + CAUTION, r -> r.yard().input().rule().policy().label())
                .heads();
        return parts(table);
    }

    static TableDefinition<OfYard> tariffs() {
        TableDefinition<OfYard> table = new TableDefinition<OfYard>("tariff_bills", "Tariffs by part of the bill", OfYard::tariffs)
                .text("plan", "Plan", "Name of the plan.", r -> r.at().plan().name())
                .year("year", "Year", "Last year of the plan.", r -> r.at().calendarYear())
                .text("tariff", "Tariff", "Tariff, the one in use first; each charged by the study's policy on its own meter or that of the building. One "
                        + "whose prices have not been given is left out.", r -> r.yard().input().metering().tariff().name())
                .heads();
        return parts(table);
    }

    private static TableDefinition<OfYard> parts(TableDefinition<OfYard> table) {
        table.text("in_use", "Used by the study", "Whether the study charges so: yes or no.", r -> r.inUse() ? "yes" : "no")
                .number("charging_peak", "Demand of charging", Unit.KILOWATT,
                        "Highest demand of charging, heat and standby in the year. A cap holds the charge "
                                + "of the packs; heat on the plug and standby come on top.",
                        r -> r.yard().yardPeakKw())
                .number("service_peak", "Demand of the service", Unit.KILOWATT, "Highest demand behind the service, the building included.",
                        r -> r.yard().servicePeakKw())
                .number("kwh", "Energy", Unit.KILOWATT_HOUR, "Energy of charging, heat and standby at the meter.", r -> r.yard().yardKwh());
        for (BillComponent part : BillComponent.values()) {
            part(table, part);
        }
        return table.money("total", "Bill", "The year's bill for charging, base-date prices; on a meter shared with the building what charging adds.",
                r -> r.yard().parts().total())
                .number("missing", "Missing", Unit.KILOWATT_HOUR, "Energy at the meter that the yard cannot bring in the year; a bill without it is low for "
                        + "that reason.", r -> r.yard().totalMissingKwh())
                .text("missed", "Missed departures", "Buses that leave without the charge that they need, each with the first month and days.",
                        r -> r.missed().isEmpty() ? null : r.missed());
    }

    private static void part(TableDefinition<OfYard> table, BillComponent part) {
        String label = part.label().substring(0, 1).toUpperCase(Locale.ROOT) + part.label().substring(1);
        table.money(part.name().toLowerCase(Locale.ROOT), label, "What charging adds to this part of the bills, base-date prices, before lines are rounded.",
                r -> r.part(part));
    }
}
