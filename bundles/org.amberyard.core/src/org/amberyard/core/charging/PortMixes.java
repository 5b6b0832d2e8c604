package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** All choices of a number of ports among some types. */
public final class PortMixes {
    private final List<PortOption> options;
    private final List<PortMix> mixes = new ArrayList<>();

    private PortMixes(List<PortOption> options) {
        this.options = options;
    }

    /** Choices of a number of ports without plug swaps, those of the lowest port cost first. */
    public static List<PortMix> of(List<PortOption> options, int number) {
        PortMixes found = new PortMixes(options);
        found.add(new ArrayList<>(), number);
        found.mixes.sort(Comparator.comparingDouble(PortMix::portCost));
        return found.mixes;
    }

    private void add(List<Integer> counts, int left) {
        boolean last = counts.size() == options.size() - 1;
        for (int count = last ? left : 0; count <= left; count++) {
            counts.add(count);
            if (last) {
                mixes.add(PortMix.of(counts, options));
            } else {
                add(counts, left - count);
            }
            counts.remove(counts.size() - 1);
        }
    }
}
