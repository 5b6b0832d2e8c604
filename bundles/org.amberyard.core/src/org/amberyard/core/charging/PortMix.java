package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A choice of ports that has every bus ready.
 *
 * @param counts number of ports by option
 * @param portCost capital and fees, money per year
 * @param swaps plug swaps in the time of all stretches
 * @param swapCost pay for them
 */
public record PortMix(List<Integer> counts, double portCost, double swaps, double swapCost) {

    public PortMix {
        counts = List.copyOf(counts);
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
            PortOption one = options.get(option);
            units.addAll(Collections.nCopies(counts.get(option), new PortUnit(one.port(), one.plugs())));
        }
        return units;
    }
}
