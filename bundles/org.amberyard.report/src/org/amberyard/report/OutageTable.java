package org.amberyard.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.amberyard.core.charging.ChargeShortfall;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.units.Unit;
import org.amberyard.core.yard.YardInput;
import org.amberyard.core.yard.YardOutage;
import org.amberyard.report.ResultRows.OfYear;

/** The table of what a port out of order does, for each year in which a plan charges. */
final class OutageTable {
    private OutageTable() {
    }

    /** A type of port, one of which is down. */
    record OfOutage(OfYear at, YardOutage outage) {
        static List<OfOutage> all(StudyResult result, Progress progress) {
            List<OfYear> years = YardRows.years(result);
            List<OfOutage> rows = new ArrayList<>();
            Map<YardInput, List<YardOutage>> known = new HashMap<>();
            for (int place = 0; place < years.size(); place++) {
                progress.part(place, years.size()).at(0);
                OfYear year = years.get(place);
                known.computeIfAbsent(YardRows.yard(year).input(), YardOutage::of).forEach(o -> rows.add(new OfOutage(year, o)));
            }
            return rows;
        }

        private YardInput yard() {
            return YardRows.yard(at).input();
        }

        String policy() {
            return yard().rule().policy().label();
        }

        int portsLeft() {
            return yard().ports().size() - 1;
        }

        String month() {
            return MonthNames.full(outage.month());
        }

        private Optional<YardOutage.Miss> worst() {
            return outage.worst();
        }

        String bus() {
            return worst().map(w -> w.shortfall().plugIn().label()).orElse(null);
        }

        /** Days of the week count from the first on which the port is down. */
        String morning() {
            return worst().map(w -> "day " + (w.day() + 1) + " of " + outage.outage().days().size() + ", "
                    + ClockWords.of(w.shortfall().plugIn().toMin())).orElse(null);
        }

        OptionalDouble missing() {
            return worst().map(w -> OptionalDouble.of(w.shortfall().shortKwh())).orElse(OptionalDouble.empty());
        }

        String missed() {
            return outage.outage().days().stream().flatMap(List::stream).map(ChargeShortfall::words).distinct()
                    .collect(Collectors.joining("; "));
        }
    }

    static TableDefinition<OfOutage> of(Progress progress) {
        return new TableDefinition<>("port_outage", "One port out of order for a school week", r -> OfOutage.all(r, progress))
                .text("plan", "Plan", "Name of the plan; one that charges nothing has no rows.", r -> r.at().plan().name())
                .year("year", "Year", "Year in which the plan has electric buses or ports.", r -> r.at().calendarYear())
                .text("policy", "Policy", "How the study charges.", OfOutage::policy)
                .text("port", "Port out of order", "Type of which one is down.", r -> r.outage().outage().port().name()).heads()
                .count("ports_left", "Ports left", "Ports of all types that still work.", OfOutage::portsLeft)
                .text("month", "Month", "Month that is hit hardest, on its coldest days.", OfOutage::month)
                .text("ready", "All buses ready", "Whether every bus still leaves with its charge every morning: yes or no.",
                        r -> r.outage().outage().harmless() ? "yes" : "no")
                .text("bus", "Bus short most", "Bus whose departure lacks most; none where all are ready.", OfOutage::bus)
                .text("morning", "On", "School day of the week in which the port is down, and time of that departure.",
                        OfOutage::morning)
                .optional("worst", "Missing then", Unit.KILOWATT_HOUR, "Energy that its pack lacks at that departure; no figure "
                        + "where all are ready.", OfOutage::missing)
                .text("missed", "Departures missed", "All departures of the week without the charge that they need.",
                        OfOutage::missed);
    }
}
