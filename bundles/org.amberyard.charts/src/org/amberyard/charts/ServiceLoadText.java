package org.amberyard.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.amberyard.core.depot.ServiceYear;

/** Load on the yard's service over the years in words and figures. */
final class ServiceLoadText {
    private static final String CAUTION = "Planned load counts for sizing only under a listed load-management system; "
            + "local code, utility and a licensed electrician decide.";

    private final int baseYear;
    private final String plan;
    private final List<ServiceYear> years;

    ServiceLoadText(int baseYear, String plan, List<ServiceYear> years) {
        this.baseYear = baseYear;
        this.plan = plan;
        this.years = years;
    }

    int calendar(int year) {
        return baseYear + year;
    }

    /** Words for the years in which a load is too much for the first time. */
    SortedMap<Integer, String> breaches() {
        SortedMap<Integer, String> words = new TreeMap<>();
        plannedBreach().ifPresent(y -> words.put(y, "planned load over limit"));
        connectedBreach().ifPresent(y -> words.merge(y, "all ports over limit", (planned, ports) -> ports + ", " + planned));
        return words;
    }

    /** First year in which all ports at full power overload the service. */
    OptionalInt connectedBreach() {
        return first(ServiceYear::connectedExceeds);
    }

    /** First year in which even charging as planned overloads the service. */
    OptionalInt plannedBreach() {
        return first(ServiceYear::demandExceeds);
    }

    private OptionalInt first(Predicate<ServiceYear> breach) {
        return IntStream.range(0, years.size()).filter(y -> breach.test(years.get(y))).findFirst();
    }

    /** The answer with the usual caution. */
    String sentences() {
        return "Plan “" + plan + "”: " + breach("all ports at full power are", connectedBreach(), true) + "; "
                + breach("charging as planned is", plannedBreach(), false) + "." + upgrades() + "\n" + CAUTION;
    }

    private String breach(String load, OptionalInt first, boolean connected) {
        int year = first.orElse(years.size() - 1);
        ServiceYear at = years.get(year);
        String size = Figures.whole(connected ? at.connectedKva() : at.demandKva()) + " of " + Figures.whole(at.limitKva())
                + " kVA";
        return first.isPresent() ? load + " too much for the service from " + calendar(year) + " on (" + size + ")"
                : load + " within the service (" + size + " in " + calendar(year) + ")";
    }

    private String upgrades() {
        List<String> changes = new ArrayList<>();
        for (int year = 1; year < years.size(); year++) {
            if (years.get(year).limitKva() > years.get(year - 1).limitKva()) {
                changes.add(" Upgraded to " + Figures.whole(years.get(year).limitKva()) + " kVA in " + calendar(year) + ".");
            }
        }
        return String.join("", changes);
    }

    ChartData data() {
        List<List<Object>> rows = new ArrayList<>();
        for (int year = 0; year < years.size(); year++) {
            ServiceYear at = years.get(year);
            rows.add(List.of(calendar(year), at.connectedKva(), at.demandKva(), at.transformerKva(),
                    at.breakerContinuousKva()));
        }
        return new ChartData(List.of("Year", "All ports at full power (kVA)", "As planned (kVA)", "Transformer (kVA)",
                "Main breaker, continuous (kVA)"), rows);
    }
}
