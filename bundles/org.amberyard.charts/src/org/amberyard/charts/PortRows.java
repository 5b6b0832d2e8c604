package org.amberyard.charts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.amberyard.core.charging.PlugIn;
import org.amberyard.core.charging.Plugged;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.yard.StretchLoad;

/** Plugs of a yard's ports on a stretch of days: which bus is plugged in when, and when energy flows. */
final class PortRows {
    /** Power below which no energy counts as flowing, kW: rounding. */
    private static final double LEAST_KW = 0.05;

    private final StretchLoad stretch;
    private final List<Row> rows = new ArrayList<>();

    /** A plug of a port. */
    record Row(int unit, int plug, String label) {
    }

    /**
     * A bus at a plug within the stretch; a stay over its end is in two parts.
     *
     * @param row place of the row
     * @param bus place among the yard's buses
     * @param label name of the bus
     * @param fromMin start, minutes after the stretch's start
     * @param toMin end
     * @param swap true when a person plugs it in at the start
     * @param kwh energy at the meter of the whole stay, kWh
     */
    record Stay(int row, int bus, String label, double fromMin, double toMin, boolean swap, double kwh) {
    }

    /** Steps on end in which energy flows into a bus, with the mean power in kW. */
    record Flow(int row, String label, double fromMin, double toMin, double kw) {
    }

    PortRows(StretchLoad stretch) {
        this.stretch = stretch;
        Map<String, Integer> numbers = new HashMap<>();
        List<PortUnit> units = stretch.charging().units();
        for (int unit = 0; unit < units.size(); unit++) {
            String name = units.get(unit).port().name() + ", no. " + numbers.merge(units.get(unit).port().name(), 1, Integer::sum);
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
        return new Stay(row(at), at.plugIn().bus(), at.plugIn().label(), fromMin, toMin, swap, kwh);
    }

    /** When energy flows, by plug-in and time. */
    List<Flow> flows() {
        List<Flow> flows = new ArrayList<>();
        stretch.plugged().forEach(at -> addFlows(at, flows));
        return flows;
    }

    private void addFlows(Plugged at, List<Flow> to) {
        double[] kw = stretch.schedule().meterKw()[at.place()];
        double stepMin = stretch.schedule().grid().stepMin();
        int from = 0;
        while (from < kw.length) {
            int next = from;
            double sum = 0;
            while (next < kw.length && kw[next] > LEAST_KW) {
                sum += kw[next++];
            }
            if (next > from) {
                to.add(new Flow(row(at), at.plugIn().label(), from * stepMin, next * stepMin, sum / (next - from)));
            }
            from = Math.max(next, from + 1);
        }
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
