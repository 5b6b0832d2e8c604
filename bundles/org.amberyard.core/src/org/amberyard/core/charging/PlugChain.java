package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.List;

/** Buses that follow each other at one plug; the last is followed by the first of the next turn of the stretch. */
final class PlugChain {
    private final int unit;
    private final int plug;
    private final PortUnit port;
    private final YardStretch stretch;
    private final ChargeRule rule;
    private final List<QueuedBus> buses = new ArrayList<>();

    PlugChain(int unit, int plug, PortUnit port, YardStretch stretch, ChargeRule rule) {
        this.unit = unit;
        this.plug = plug;
        this.port = port;
        this.stretch = stretch;
        this.rule = rule;
    }

    List<QueuedBus> buses() {
        return buses;
    }

    /** The best slot for a bus that does not delay those who have one; nothing when there is none or the port does not fit. */
    PlugSlot slot(QueuedBus bus, boolean sparing) {
        PlugIn stay = bus.plugIn;
        double batteryKw = port.sharedKw(stay.acceptance(), port.plugs()) * port.port().efficiency();
        double needMin = 60 * stay.acceptance().curve().hours(stay.startShare(), stay.endShare(), batteryKw);
        PlugSlot best = null;
        for (int position = 0; batteryKw > 0 && position <= buses.size(); position++) {
            PlugSlot slot = slot(bus, position, batteryKw, needMin);
            best = slot != null && slot.betterThan(best, sparing) ? slot : best;
        }
        return best;
    }

    private PlugSlot slot(QueuedBus bus, int position, double batteryKw, double needMin) {
        double startMin = bus.arrivalMin;
        boolean swap = false;
        if (!buses.isEmpty()) {
            QueuedBus before = buses.get(position == 0 ? buses.size() - 1 : position - 1);
            double turn = position == 0 ? -stretch.grid().lengthMin() : 0;
            swap = before.departureMin + turn > bus.arrivalMin;
            startMin = swap ? stretch.swapHours().next(Math.max(startMin, before.readyMin + turn)) : startMin;
        }
        ChargeTimes times = rule.times(bus.arrivalMin, bus.chargeByMin).between(startMin, bus.chargeByMin);
        boolean full = times.minutes() >= needMin;
        double readyMin = full ? Math.max(startMin, times.after(needMin)) : bus.chargeByMin;
        if (!(startMin < bus.chargeByMin) || !letsNextIn(bus, position, readyMin)) {
            return null;
        }
        double shortKwh = full ? 0 : shortKwh(bus, times.minutes() / 60, batteryKw);
        return new PlugSlot(unit, plug, position, startMin, readyMin, shortKwh, swap);
    }

    private boolean letsNextIn(QueuedBus bus, int position, double readyMin) {
        if (buses.isEmpty()) {
            return true;
        }
        boolean last = position == buses.size();
        double afterMin = last ? buses.get(0).startMin + stretch.grid().lengthMin() : buses.get(position).startMin;
        return readyMin <= afterMin && (bus.departureMin <= afterMin || stretch.swapHours().at(afterMin));
    }

    private static double shortKwh(QueuedBus bus, double hours, double batteryKw) {
        PlugIn stay = bus.plugIn;
        double left = stay.acceptance().curve().endShare(stay.startShare(), batteryKw, hours);
        return (stay.endShare() - left) * stay.acceptance().curve().usableKwh();
    }

    /** Gives a bus a slot of this plug. */
    void insert(QueuedBus bus, PlugSlot slot) {
        bus.unit = unit;
        bus.plug = plug;
        bus.startMin = slot.startMin();
        bus.readyMin = slot.readyMin();
        bus.shortKwh = slot.shortKwh();
        bus.swap = slot.swap();
        buses.add(slot.position(), bus);
        if (buses.size() > 1) {
            boolean last = slot.position() == buses.size() - 1;
            QueuedBus after = buses.get(last ? 0 : slot.position() + 1);
            after.swap |= bus.departureMin > after.startMin + (last ? stretch.grid().lengthMin() : 0);
        }
    }

    /** Moment up to which a bus of the chain can stay: its departure, or when the next one is plugged in. */
    double untilMin(int position) {
        QueuedBus bus = buses.get(position);
        if (buses.size() == 1) {
            return bus.departureMin;
        }
        boolean last = position == buses.size() - 1;
        double next = last ? buses.get(0).startMin + stretch.grid().lengthMin() : buses.get(position + 1).startMin;
        return Math.min(bus.departureMin, next);
    }
}
