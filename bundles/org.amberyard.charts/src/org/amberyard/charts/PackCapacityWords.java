package org.amberyard.charts;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.charts.PackCapacities.Bus;
import org.amberyard.charts.PackCapacities.End;

/** What the chart of packs shows, in sentences and as a table. */
final class PackCapacityWords {
    private final PackCapacities capacities;

    PackCapacityWords(PackCapacities capacities) {
        this.capacities = capacities;
    }

    /** Capacities at the end, ends of packs with their cause, and the years of the buses that are picked out. */
    String sentences(List<Bus> picked) {
        if (capacities.list().isEmpty()) {
            return none();
        }
        return "Plan “" + capacities.plan() + "”, capacity of the packs at the end of " + capacities.lastYear() + ": "
                + String.join("; ", capacities.list().stream().map(b -> b.unit() + " " + last(b)).toList()) + "." + ends()
                + String.join("", picked.stream().map(this::years).toList());
    }

    private String ends() {
        return capacities.ends().isEmpty() ? " No pack comes to its end before the last year." : " Packs at their end: "
                + String.join("; ", capacities.ends().stream().map(End::words).toList()) + ".";
    }

    /** Years of a bus. */
    private String years(Bus bus) {
        List<String> years = new ArrayList<>();
        for (int end = 1; end < bus.points().size(); end += 2) {
            years.add(Figures.pattern("0").format(bus.points().get(end).time() - 1) + " "
                    + Figures.wholePercent(bus.points().get(end).health()));
        }
        return " " + bus.unit() + " in place " + capacities.place(bus.place()) + " by years: " + String.join(", ", years) + ".";
    }

    private static String last(Bus bus) {
        return Figures.wholePercent(bus.points().get(bus.points().size() - 1).health());
    }

    /** Why there is nothing to show. */
    String none() {
        return "Plan “" + capacities.plan() + "” has no electric bus.";
    }

    ChartData data() {
        List<List<Object>> rows = new ArrayList<>();
        for (Bus bus : capacities.list()) {
            for (PackCapacities.Point point : bus.points()) {
                rows.add(List.of(bus.unit(), capacities.type(bus.type()), point.time(), 100 * point.health()));
            }
        }
        return new ChartData(List.of("Bus", "Type", "Time (calendar year)", "Capacity (%)"), rows);
    }
}
