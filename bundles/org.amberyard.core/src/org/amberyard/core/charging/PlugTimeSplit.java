package org.amberyard.core.charging;

import java.util.Arrays;
import java.util.List;

/**
 * Splits the time at a shared plug between buses that follow each other by swaps, each getting time in proportion to what it
 * needs at full power, at moments when a person is there, and never so little that a bus cannot be ready. Common practice for
 * managed charging, no source.
 */
final class PlugTimeSplit {
    private final PlugChain chain;
    private final SwapHours swapHours;

    PlugTimeSplit(PlugChain chain, SwapHours swapHours) {
        this.chain = chain;
        this.swapHours = swapHours;
    }

    /** Moves the swaps of the chain. */
    void split() {
        List<QueuedBus> buses = chain.buses();
        int from = 0;
        for (int next = 1; next <= buses.size(); next++) {
            if (next == buses.size() || !buses.get(next).swap) {
                split(buses.subList(from, next), chain.untilMin(next - 1));
                from = next;
            }
        }
    }

    private void split(List<QueuedBus> buses, double endMin) {
        double[] needMin = buses.stream().mapToDouble(QueuedBus::chargingMin).toArray();
        double[] latestMin = latestStarts(buses, endMin, needMin);
        double leftMin = Arrays.stream(needMin).sum();
        for (int place = 0; place + 1 < buses.size(); place++) {
            QueuedBus bus = buses.get(place);
            QueuedBus after = buses.get(place + 1);
            double share = leftMin > 0 ? needMin[place] / leftMin : 0;
            double leastMin = Math.max(after.arrivalMin, bus.startMin + needMin[place]);
            double wishMin = Math.max(leastMin, bus.startMin + (endMin - bus.startMin) * share);
            after.startMin = swapMin(wishMin, leastMin, latestMin[place + 1]);
            leftMin -= needMin[place];
        }
        for (int place = 0; place < buses.size(); place++) {
            buses.get(place).readyMin = buses.get(place).startMin + needMin[place];
        }
    }

    /** Latest moments at which each can be plugged in and it and those after it still be ready; not before it is now. */
    private double[] latestStarts(List<QueuedBus> buses, double endMin, double[] needMin) {
        double[] latest = new double[buses.size()];
        double until = endMin;
        for (int place = buses.size() - 1; place >= 0; place--) {
            QueuedBus bus = buses.get(place);
            latest[place] = Math.max(bus.startMin, swapHours.last(Math.min(until, bus.chargeByMin) - needMin[place]));
            until = latest[place];
        }
        return latest;
    }

    private double swapMin(double wishMin, double leastMin, double latestMin) {
        double wanted = swapHours.next(Math.min(wishMin, latestMin));
        if (wanted <= latestMin) {
            return wanted;
        }
        double before = swapHours.last(latestMin);
        return before >= leastMin ? before : swapHours.next(leastMin);
    }
}
