package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.PriorityQueue;
import java.util.stream.IntStream;

/**
 * All choices of a number of ports among some types without plug swaps, those of the lowest port cost first; each is
 * made when it is
 * asked for.
 *
 * <p>From all ports of the cheapest type on, every choice is reached once by steps that make one port dearer by one
 * type: either one
 * of the cheapest type, or the only one of the cheapest type above it. No step lowers the cost, so the cheapest
 * choice that is not
 * yet told is among those reached.
 */
public final class PortMixes implements Iterator<PortMix> {
    private final List<PortOption> options;
    private final int[] byCost;
    private final PriorityQueue<Reached> reached = new PriorityQueue<>(
            Comparator.comparingDouble((Reached r) -> r.mix.portCost()).thenComparing(r -> r.mix.counts().toString()));

    /** A choice with its numbers of ports from the cheapest type to the dearest. */
    private record Reached(PortMix mix, int[] counts) {
    }

    private PortMixes(List<PortOption> options, int number) {
        this.options = options;
        this.byCost = IntStream.range(0, options.size()).boxed()
                .sorted(Comparator.comparingDouble(o -> options.get(o).costPerYear())).mapToInt(o -> o).toArray();
        if (!options.isEmpty()) {
            int[] cheapest = new int[options.size()];
            cheapest[0] = number;
            reach(cheapest);
        }
    }

    /** Choices of a number of ports; none without types. */
    public static Iterable<PortMix> of(List<PortOption> options, int number) {
        return () -> new PortMixes(options, number);
    }

    @Override
    public boolean hasNext() {
        return !reached.isEmpty();
    }

    @Override
    public PortMix next() {
        if (reached.isEmpty()) {
            throw new NoSuchElementException("All mixes of ports are told");
        }
        Reached next = reached.poll();
        int[] counts = next.counts;
        if (counts[0] > 0 && counts.length > 1) {
            reach(moved(counts, 0));
        }
        int above = IntStream.range(1, counts.length).filter(o -> counts[o] > 0).findFirst().orElse(counts.length);
        if (above + 1 < counts.length && counts[above] == 1) {
            reach(moved(counts, above));
        }
        return next.mix;
    }

    private static int[] moved(int[] counts, int from) {
        int[] moved = counts.clone();
        moved[from]--;
        moved[from + 1]++;
        return moved;
    }

    private void reach(int[] counts) {
        List<Integer> inOrder = new ArrayList<>(Collections.nCopies(counts.length, 0));
        for (int place = 0; place < counts.length; place++) {
            inOrder.set(byCost[place], counts[place]);
        }
        reached.add(new Reached(PortMix.of(inOrder, options), counts));
    }
}
