package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A queue for plugs when there are fewer of them than buses.
 *
 * <p>Buses are given times in the order of their departures, counted from the quietest moment of the stretch, then by number;
 * each gets the plug at which it is ready soonest without delaying those before it; a sparing queue would rather have it
 * ready in time without a swap. A bus that finds a free plug is plugged in
 * by its driver; one that had to wait, or whose plug is still held by another, is plugged in by a person of the yard. At a port
 * with several plugs a bus counts on an equal part of its power. For managed policies the time at a plug is then split, see
 * {@link PlugTimeSplit}.
 */
final class ChargeQueue {
    private final YardStretch stretch;
    private final ChargeRule rule;
    private final boolean sparing;
    private final List<PlugChain> chains = new ArrayList<>();

    private ChargeQueue(YardStretch stretch, List<PortUnit> units, ChargeRule rule, boolean sparing) {
        this.stretch = stretch;
        this.rule = rule;
        this.sparing = sparing;
        for (int unit = 0; unit < units.size(); unit++) {
            for (int plug = 0; plug < units.get(unit).plugs(); plug++) {
                chains.add(new PlugChain(unit, plug, units.get(unit), stretch, rule));
            }
        }
    }

    static PortAssignment of(YardStretch stretch, List<PortUnit> units, ChargeRule rule, boolean sparing) {
        return new ChargeQueue(stretch, units, rule, sparing).assigned();
    }

    private PortAssignment assigned() {
        List<PlugIn> without = new ArrayList<>();
        for (QueuedBus bus : inOrder()) {
            if (!placed(bus)) {
                without.add(bus.plugIn);
            }
        }
        Plugged[] plugged = new Plugged[stretch.plugIns().size()];
        for (PlugChain chain : chains) {
            if (rule.managed()) {
                new PlugTimeSplit(chain, stretch.swapHours()).split();
            }
            for (int position = 0; position < chain.buses().size(); position++) {
                QueuedBus bus = chain.buses().get(position);
                plugged[bus.place] = bus.until(chain.untilMin(position));
            }
        }
        return PlugList.assignment(plugged, without);
    }

    private List<QueuedBus> inOrder() {
        double lengthMin = stretch.grid().lengthMin();
        double quietMin = PlugList.quietestMin(stretch.plugIns(), lengthMin);
        List<QueuedBus> queue = new ArrayList<>(stretch.plugIns().size());
        for (int place = 0; place < stretch.plugIns().size(); place++) {
            PlugIn plugIn = stretch.plugIns().get(place);
            queue.add(new QueuedBus(place, plugIn, plugIn.fromMin() < quietMin ? lengthMin : 0));
        }
        queue.sort(Comparator.comparingDouble((QueuedBus b) -> b.departureMin).thenComparingInt(b -> b.plugIn.bus())
                .thenComparingDouble(b -> b.arrivalMin));
        return queue;
    }

    private boolean placed(QueuedBus bus) {
        PlugSlot best = null;
        PlugChain bestChain = null;
        for (PlugChain chain : chains) {
            PlugSlot slot = chain.slot(bus, sparing);
            if (slot != null && slot.betterThan(best, sparing)) {
                best = slot;
                bestChain = chain;
            }
        }
        if (best != null) {
            bestChain.insert(bus, best);
        }
        return best != null;
    }
}
