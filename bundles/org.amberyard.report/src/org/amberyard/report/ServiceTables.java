package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.amberyard.core.charging.ChargeShortfall;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.ServiceAdvice;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.units.Unit;
import org.amberyard.core.yard.YardOutage;
import org.amberyard.report.LastYears.LastYear;

/** Tables of what keeps a plan within the electric service, and of what a port out of order does. */
final class ServiceTables {
    private ServiceTables() {
    }

    /** A remedy of a plan. */
    record OfRemedy(StudyResult result, PlanResult plan, ServiceAdvice advice, ServiceAdvice.Remedy remedy) {
        static List<OfRemedy> all(StudyResult result, Progress progress) {
            List<OfRemedy> rows = new ArrayList<>();
            List<PlanResult> plans = result.plans();
            for (int place = 0; place < plans.size(); place++) {
                PlanResult plan = plans.get(place);
                ServiceAdvice advice = ServiceAdvice.of(result.input(), plan, progress.part(place, plans.size()));
                advice.remedies().forEach(r -> rows.add(new OfRemedy(result, plan, advice, r)));
            }
            return rows;
        }

        String calendar(OptionalInt year) {
            return year.isPresent() ? String.valueOf(result.input().baseYear() + year.getAsInt()) : "never";
        }

        String order() {
            return remedy.orderYear().isPresent() ? calendar(remedy.orderYear()) : "any time";
        }
    }

    static TableDefinition<OfRemedy> serviceRemedies(Progress progress) {
        return new TableDefinition<>("service_remedies", "What keeps a plan within the electric service",
                r -> OfRemedy.all(r, progress))
                .text("plan", "Plan", "Name of the plan; a plan whose ports stay within the service at full power has no rows.",
                        r -> r.plan().name())
                .text("connected_from", "Full power exceeds from", "First year in which all ports at full power exceed the service.",
                        r -> r.calendar(r.advice().connectedFrom()))
                .text("planned_from", "Planned charging exceeds from", "First year in which even charging as planned exceeds it.",
                        r -> r.calendar(r.advice().plannedFrom()))
                .year("year", "Judged in", "Year of the highest connected load.",
                        r -> r.result().input().baseYear() + r.advice().year())
                .text("remedy", "Remedy", "What would do. Local code, the utility and a licensed electrician decide; managed "
                        + "charging counts only under a listed load-management system.", r -> r.remedy().words())
                .number("load", "Load", Unit.KILOVOLTAMPERE, "Load that the service then sees.", r -> r.remedy().loadKva())
                .money("cost", "Cost per year", "Beyond the plan as it is, base-date money, capital by its recovery over its life; "
                        + "negative when it saves.", r -> r.remedy().costPerYear())
                .text("order", "Order by", "Year in which it must be ordered to be there in time.", OfRemedy::order);
    }

    /** A type of port, one of which is down. */
    record OfOutage(LastYear at, YardOutage outage) {
        static List<OfOutage> all(List<LastYear> years) {
            return years.stream().flatMap(y -> YardOutage.of(y.input()).stream().map(o -> new OfOutage(y, o))).toList();
        }

        String month() {
            return MonthNames.full(outage.month());
        }

        String missed() {
            return outage.outage().days().stream().flatMap(List::stream).map(ChargeShortfall::words).distinct()
                    .collect(Collectors.joining("; "));
        }
    }

    static TableDefinition<OfOutage> portOutage(LastYears years) {
        return new TableDefinition<>("port_outage", "One port out of order for a school week", r -> OfOutage.all(years.of(r)))
                .text("plan", "Plan", "Name of the plan.", r -> r.at().plan().name())
                .year("year", "Year", "Last year of the plan.", r -> r.at().at().calendarYear())
                .text("port", "Port out of order", "Type of which one is down.", r -> r.outage().outage().port().name())
                .text("month", "Month", "Month that is hit hardest, on its coldest days.", OfOutage::month)
                .text("ready", "All buses ready", "Whether every bus still leaves with its charge every morning: yes or no.",
                        r -> r.outage().outage().harmless() ? "yes" : "no")
                .number("worst", "Worst", Unit.KILOWATT_HOUR, "Energy that the worst departure lacks.",
                        r -> r.outage().outage().worstKwh())
                .text("missed", "Missed", "Departures without the charge that they need.", OfOutage::missed);
    }
}
