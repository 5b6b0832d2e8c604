package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A choice of ports.
 *
 * @param counts number of ports by option
 * @param portCost capital and fees, money per year
 * @param swaps plug swaps in a year
 * @param swapCost pay for them
 */
public record PortMix(List<Integer> counts, double portCost, double swaps, double swapCost) {

    public PortMix {
        counts = List.copyOf(counts);
    }

    /** Numbers of ports among options, as long as no plug is moved. */
    static PortMix of(List<Integer> counts, List<PortOption> options) {
        double portCost = 0;
        for (int option = 0; option < counts.size(); option++) {
            portCost += counts.get(option) * options.get(option).costPerYear();
        }
        return new PortMix(counts, portCost, 0, 0);
    }

    /** Ports of a yard that are all on offer, as long as no plug is moved. */
    public static PortMix ofUnits(List<PortUnit> units, List<PortOption> options) {
        return of(options.stream().map(o -> (int) units.stream().filter(u -> u.port().equals(o.port())).count()).toList(), options);
    }

    /** The same with plugs moved a number of times a year. */
    public PortMix withSwaps(double number, double payPerSwap) {
        return new PortMix(counts, portCost, number, number * payPerSwap);
    }

    /** The same with ports of an option more, as long as no other plug is moved for them. */
    public PortMix plus(int more, List<PortOption> options, int option) {
        List<Integer> with = new ArrayList<>(counts);
        with.set(option, counts.get(option) + more);
        return new PortMix(with, portCost + more * options.get(option).costPerYear(), swaps, swapCost);
    }

    /** Number of ports. */
    public int ports() {
        return counts.stream().mapToInt(Integer::intValue).sum();
    }

    /** Cost of ports and swaps, money per year. */
    public double cost() {
        return portCost + swapCost;
    }

    /** The ports. */
    public List<PortUnit> units(List<PortOption> options) {
        List<PortUnit> units = new ArrayList<>();
        for (int option = 0; option < counts.size(); option++) {
            units.addAll(Collections.nCopies(counts.get(option), options.get(option).unit()));
        }
        return units;
    }
}
