package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A plug of its own for every bus, while there are enough.
 *
 * <p>Buses choose in turn: first those that do not fit every kind of port of the yard, then the others; within each the one that
 * needs most power over its stay, then by number. A bus takes the port that charges it fastest with those who chose before, and
 * of equals the weakest. So one more port never leaves a bus a weaker one, as long as plugs do not share power.
 */
final class DedicatedPlugs {
    private final YardStretch stretch;
    private final List<PortUnit> units;
    private final int[] taken;

    private DedicatedPlugs(YardStretch stretch, List<PortUnit> units) {
        this.stretch = stretch;
        this.units = units;
        this.taken = new int[units.size()];
    }

    /** A bus with its plug-ins. */
    private record Stays(List<Integer> places, PlugIn tightest, boolean choosy) {
    }

    /** Assignment; empty when a bus that fits a port of the yard finds no free plug. */
    static Optional<PortAssignment> of(YardStretch stretch, List<PortUnit> units) {
        return new DedicatedPlugs(stretch, units).assigned();
    }

    private Optional<PortAssignment> assigned() {
        Plugged[] plugged = new Plugged[stretch.plugIns().size()];
        List<PlugIn> without = new ArrayList<>();
        for (Stays bus : inTurn()) {
            int unit = best(bus.tightest.acceptance());
            if (unit < 0 && fits(bus.tightest.acceptance())) {
                return Optional.empty();
            }
            for (int place : bus.places) {
                PlugIn stay = stretch.plugIns().get(place);
                if (unit < 0) {
                    without.add(stay);
                } else {
                    plugged[place] = new Plugged(place, stay, unit, taken[unit] - 1, stay.fromMin(), stay.toMin(), false);
                }
            }
        }
        return Optional.of(PlugList.assignment(plugged, without));
    }

    private List<Stays> inTurn() {
        List<Integer> places = PlugList.ordered(stretch.plugIns(),
                Comparator.comparingInt(PlugIn::bus).thenComparingDouble(PlugIn::fromMin));
        List<Stays> buses = new ArrayList<>();
        for (int from = 0, to; from < places.size(); from = to) {
            int bus = stretch.plugIns().get(places.get(from)).bus();
            for (to = from + 1; to < places.size() && stretch.plugIns().get(places.get(to)).bus() == bus;) {
                to++;
            }
            buses.add(stays(places.subList(from, to)));
        }
        buses.sort(Comparator.comparing((Stays b) -> !b.choosy).thenComparingDouble(b -> -b.tightest.evenKw()));
        return buses;
    }

    private Stays stays(List<Integer> places) {
        PlugIn tightest = stretch.plugIns().get(places.get(0));
        for (int place : places) {
            PlugIn stay = stretch.plugIns().get(place);
            tightest = stay.evenKw() > tightest.evenKw() ? stay : tightest;
        }
        return new Stays(places, tightest, choosy(tightest.acceptance()));
    }

    private boolean choosy(BusAcceptance bus) {
        for (PortUnit unit : units) {
            if (!(bus.meterKw(unit.port()) > 0)) {
                return true;
            }
        }
        return false;
    }

    private boolean fits(BusAcceptance bus) {
        for (PortUnit unit : units) {
            if (bus.meterKw(unit.port()) > 0) {
                return true;
            }
        }
        return false;
    }

    /** Takes the best free plug for a bus and returns its port; negative when there is none. */
    private int best(BusAcceptance bus) {
        int best = -1;
        double bestKw = 0;
        for (int place = 0; place < units.size(); place++) {
            PortUnit unit = units.get(place);
            if (taken[place] == unit.plugs()) {
                continue;
            }
            double kw = unit.sharedKw(bus, taken[place] + 1) * unit.port().efficiency();
            boolean weaker = best >= 0 && kw == bestKw && unit.port().powerKw() < units.get(best).port().powerKw();
            if (kw > bestKw || weaker) {
                best = place;
                bestKw = kw;
            }
        }
        if (best >= 0) {
            taken[best]++;
        }
        return best;
    }
}
