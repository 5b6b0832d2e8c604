package org.amberyard.charts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.amberyard.core.charging.ChargeSpan;
import org.amberyard.core.charging.PlugIn;
import org.amberyard.core.charging.Plugged;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.yard.StretchLoad;

/** Plugs of a yard's ports on a stretch of days: which bus is plugged in when, and when energy flows. */
final class PortRows {

    private final StretchLoad stretch;
    private final List<Row> rows = new ArrayList<>();

    /** A plug of a port. */
    record Row(int unit, int plug, String label) {
    }

    /**
     * A bus at a plug within the stretch; a stay over its end is in two parts.
     *
     * @param row place of the row
     * @param place place of the plug-in in the stretch
     * @param bus place among the yard's buses
     * @param label name of the bus
     * @param fromMin start, minutes after the stretch's start
     * @param toMin end
     * @param swap true when a person plugs it in at the start
     * @param kwh energy at the meter of the whole stay, kWh
     */
    record Stay(int row, int place, int bus, String label, double fromMin, double toMin, boolean swap, double kwh) {
    }

    /**
     * Steps on end in which energy flows into a bus, into its battery or for heat.
     *
     * @param row place of the row
     * @param bus place among the yard's buses
     * @param label name of the bus
     * @param fromMin start, minutes after the stretch's start
     * @param toMin end
     * @param kwh energy at the meter, kWh
     */
    record Flow(int row, int bus, String label, double fromMin, double toMin, double kwh) {

        /** Mean power, kW. */
        double kw() {
            return kwh / ((toMin - fromMin) / 60);
        }
    }

    PortRows(StretchLoad stretch) {
        this.stretch = stretch;
        Map<String, Integer> numbers = new HashMap<>();
        List<PortUnit> units = stretch.charging().units();
        for (int unit = 0; unit < units.size(); unit++) {
            String type = units.get(unit).port().name();
            String name = type + ", no. " + numbers.merge(type, 1, Integer::sum);
            for (int plug = 0; plug < units.get(unit).plugs(); plug++) {
                rows.add(new Row(unit, plug, units.get(unit).plugs() == 1 ? name : name + ", plug " + (plug + 1)));
            }
        }
    }

    List<Row> rows() {
        return rows;
    }

    double lengthMin() {
        return stretch.schedule().grid().lengthMin();
    }

    private int row(Plugged at) {
        return rows.stream().filter(r -> r.unit() == at.unit() && r.plug() == at.plug()).findFirst().map(rows::indexOf)
                .orElseThrow();
    }

    /** Buses at plugs, by row and time. */
    List<Stay> stays() {
        List<Stay> stays = new ArrayList<>();
        for (Plugged at : stretch.plugged()) {
            double kwh = stretch.schedule().meterKwh(at.place());
            double fromMin = at.fromMin() % lengthMin();
            double toMin = fromMin + at.toMin() - at.fromMin();
            stays.add(stay(at, fromMin, Math.min(toMin, lengthMin()), at.swap(), kwh));
            if (toMin > lengthMin()) {
                stays.add(stay(at, 0, toMin - lengthMin(), false, kwh));
            }
        }
        stays.sort(Comparator.comparingInt(Stay::row).thenComparingDouble(Stay::fromMin));
        return stays;
    }

    private Stay stay(Plugged at, double fromMin, double toMin, boolean swap, double kwh) {
        return new Stay(row(at), at.place(), at.plugIn().bus(), at.plugIn().label(), fromMin, toMin, swap, kwh);
    }

    /** When batteries are charged, by row and time. */
    List<Flow> flows() {
        return stays().stream().flatMap(s -> flows(s, stretch.schedule().meterKw()[s.place()], s.fromMin(), s.toMin()).stream()).toList();
    }

    /** When cabins and packs are warmed or cooled through a plug, by row and time; each bus at the first plug that it has. */
    List<Flow> heat() {
        Map<Integer, Stay> byBus = stays().stream().collect(Collectors.toMap(Stay::bus, s -> s, (first, other) -> first, TreeMap::new));
        return byBus.values().stream().flatMap(s -> flows(s, stretch.heatKw().get(s.bus()), 0, lengthMin()).stream())
                .sorted(Comparator.comparingInt(Flow::row)).toList();
    }

    /** Heat of buses that are plugged in for it alone. */
    List<Flow> heatAlone() {
        List<Stay> stays = stays();
        return heat().stream().filter(f -> stays.stream()
                .noneMatch(s -> s.bus() == f.bus() && s.fromMin() < f.toMin() && f.fromMin() < s.toMin())).toList();
    }

    private List<Flow> flows(Stay at, double[] kw, double fromMin, double toMin) {
        List<Flow> flows = new ArrayList<>();
        double stepMin = stretch.schedule().grid().stepMin();
        int end = (int) Math.ceil(toMin / stepMin);
        for (int step = (int) Math.floor(fromMin / stepMin); step < end; step++) {
            int from = step;
            double sum = 0;
            while (step < end && ChargeSpan.draws(kw[step])) {
                sum += kw[step++];
            }
            if (step > from) {
                flows.add(new Flow(at.row(), at.bus(), at.label(), Math.max(fromMin, from * stepMin),
                        Math.min(toMin, step * stepMin), sum * stepMin / 60));
            }
        }
        return flows;
    }

    /** Buses that get no plug and buses that leave short, in words; empty when all leave ready. */
    List<String> troubles() {
        List<String> words = new ArrayList<>();
        String without = stretch.charging().assignment().withoutPlug().stream().map(PlugIn::label).distinct().sorted()
                .collect(Collectors.joining(", "));
        if (!without.isEmpty()) {
            words.add("Without a plug: " + without + ".");
        }
        stretch.schedule().shortfalls().forEach(s -> words.add(s.words() + "."));
        return words;
    }

    int swaps() {
        return stretch.charging().assignment().swaps();
    }
}
