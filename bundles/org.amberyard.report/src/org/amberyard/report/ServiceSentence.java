package org.amberyard.report;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.amberyard.charts.Figures;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.yard.YardYear;

/** Says whether the electric service carries a plan's charging. */
final class ServiceSentence {
    private static final int MOST_NAMES = 4;

    private ServiceSentence() {
    }

    static String of(PlanResult plan, StudyInput study) {
        return of(plan.service(), study.baseYear(), plan.measures().meterKwh() > 0);
    }

    /** Buses that leave without the charge that they need, from the first year in which one does; blank where all have it. */
    static String unready(PlanResult plan, int baseYear) {
        List<YardYear> yards = plan.yards();
        OptionalInt year = IntStream.range(0, yards.size()).filter(y -> !yards.get(y).busesShort().isEmpty()).findFirst();
        if (year.isEmpty()) {
            return "";
        }
        List<String> buses = yards.stream().flatMap(y -> y.busesShort().stream()).distinct().sorted().toList();
        return "From " + (baseYear + year.getAsInt()) + " charging leaves buses short of what they need: "
                + String.join(", ", buses.subList(0, Math.min(MOST_NAMES, buses.size())))
                + (buses.size() > MOST_NAMES ? ", +" + (buses.size() - MOST_NAMES) : "") + ".";
    }

    static String of(List<ServiceYear> years, int baseYear, boolean electricBuses) {
        if (years.stream().allMatch(y -> y.ports() == 0)) {
            return electricBuses ? "The plan runs electric buses but installs no charging ports."
                    : "The plan installs no charging ports.";
        }
        OptionalInt connected = first(years, ServiceYear::connectedExceeds);
        OptionalInt planned = first(years, ServiceYear::demandExceeds);
        String limit = limit(years.get(0));
        String start = connected.isPresent()
                ? "All ports at full power exceed " + limit + from(connected.getAsInt(), baseYear)
                : "All ports at full power stay within " + limit + " in every year";
        return start + planned(connected, planned, baseYear) + ".";
    }

    private static String planned(OptionalInt connected, OptionalInt planned, int baseYear) {
        if (planned.isPresent()) {
            return "; even charging as planned exceeds it" + from(planned.getAsInt(), baseYear);
        }
        return connected.isEmpty() ? ""
                : "; charging as planned, which takes a load-management system, stays within it";
    }

    private static String from(int year, int baseYear) {
        return " from " + (baseYear + year);
    }

    private static String limit(ServiceYear service) {
        String size = Figures.whole(service.limitKva()) + " kVA";
        return service.transformerKva() <= service.breakerContinuousKva() ? "the " + size + " transformer"
                : "the " + size + " that the main breaker carries continuously";
    }

    private static OptionalInt first(List<ServiceYear> years, Predicate<ServiceYear> which) {
        return IntStream.range(0, years.size()).filter(y -> which.test(years.get(y))).findFirst();
    }
}
