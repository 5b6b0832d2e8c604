package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the cheapest ports that have every bus ready, for each number of ports.
 *
 * <p>For each number from one to that of the buses the mixes are tried in the order of their port cost, and the search stops
 * where port cost alone reaches the best cost found; so it is exact without asking that more ports always serve better. Mixes
 * that cannot deliver the energy of a stretch even at full power all day are passed over.
 *
 * @param options types of ports
 * @param stretches stretches that must be served, with their number in a year
 * @param rule policy
 * @param payPerSwap pay of a plug swap, money
 */
public record PortMixSearch(List<PortOption> options, List<YardStretch> stretches, ChargeRule rule, double payPerSwap) {

    public PortMixSearch {
        options = List.copyOf(options);
        stretches = List.copyOf(stretches);
    }

    /** The cheapest mix for each number of ports that can serve, fewest ports first. */
    public List<PortMix> byNumber() {
        List<PortMix> found = new ArrayList<>();
        for (int number = 1; number <= buses(); number++) {
            cheapestOf(number).ifPresent(found::add);
        }
        return found;
    }

    /** The cheapest of all; of equals the one with the fewest ports. */
    public static Optional<PortMix> cheapest(List<PortMix> mixes) {
        return mixes.stream().min(Comparator.comparingDouble(PortMix::cost).thenComparingInt(PortMix::ports));
    }

    private int buses() {
        Set<Integer> buses = new HashSet<>();
        stretches.forEach(s -> s.plugIns().forEach(p -> buses.add(p.bus())));
        return buses.size();
    }

    private Optional<PortMix> cheapestOf(int number) {
        List<PortMix> mixes = new ArrayList<>();
        addMixes(new ArrayList<>(), number, mixes);
        mixes.sort(Comparator.comparingDouble(PortMix::portCost));
        PortMix best = null;
        for (PortMix mix : mixes) {
            if (best != null && mix.portCost() >= best.cost()) {
                break;
            }
            PortMix served = served(mix).orElse(null);
            best = served != null && (best == null || served.cost() < best.cost()) ? served : best;
        }
        return Optional.ofNullable(best);
    }

    private void addMixes(List<Integer> counts, int left, List<PortMix> mixes) {
        PortOption option = options.get(counts.size());
        boolean last = counts.size() == options.size() - 1;
        for (int count = last ? left : 0; count <= Math.min(left, option.most()); count++) {
            counts.add(count);
            if (last) {
                mixes.add(new PortMix(counts, portCost(counts), 0, 0));
            } else {
                addMixes(counts, left - count, mixes);
            }
            counts.remove(counts.size() - 1);
        }
    }

    private double portCost(List<Integer> counts) {
        double sum = 0;
        for (int option = 0; option < counts.size(); option++) {
            sum += counts.get(option) * options.get(option).costPerYear();
        }
        return sum;
    }

    private Optional<PortMix> served(PortMix mix) {
        List<PortUnit> units = mix.units(options);
        double swaps = 0;
        for (YardStretch stretch : stretches) {
            if (!enoughPower(stretch, units)) {
                return Optional.empty();
            }
            YardCharging charging = YardCharging.of(stretch, units, rule);
            if (!charging.served()) {
                return Optional.empty();
            }
            swaps += stretch.times() * charging.assignment().swaps();
        }
        return Optional.of(new PortMix(mix.counts(), mix.portCost(), swaps, swaps * payPerSwap));
    }

    private static boolean enoughPower(YardStretch stretch, List<PortUnit> units) {
        double needKwh = 0;
        for (PlugIn stay : stretch.plugIns()) {
            needKwh += stay.batteryKwh();
        }
        double batteryKw = 0;
        for (PortUnit unit : units) {
            batteryKw += unit.port().powerKw() * unit.port().efficiency();
        }
        return needKwh <= batteryKw * stretch.grid().lengthMin() / 60;
    }
}
