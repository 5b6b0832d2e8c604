package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class PortMixesTest {

    private static List<PortOption> options(List<Integer> costs) {
        return costs.stream().map(cost -> new PortOption(SampleYard.port("type " + cost, false, 10, 0.9), cost))
                .toList();
    }

    private static List<PortMix> all(List<PortOption> options, int number) {
        List<PortMix> all = new ArrayList<>();
        PortMixes.of(options, number).forEach(all::add);
        return all;
    }

    /** Choices with repetition of n among k: (n + k - 1) over n. */
    private static long choices(int number, int types) {
        long choices = 1;
        for (int i = 1; i < types; i++) {
            choices = choices * (number + i) / i;
        }
        return choices;
    }

    @Property(tries = 200)
    void everyChoiceStandsOnceInTheOrderOfItsCost(@ForAll @Size(min = 1, max = 4) List<@IntRange(min = 1, max = 9) Integer> costs,
            @ForAll @IntRange(min = 0, max = 7) int number) {
        List<PortMix> mixes = all(options(costs), number);
        assertEquals(choices(number, costs.size()), new HashSet<>(mixes.stream().map(PortMix::counts).toList()).size());
        assertEquals(choices(number, costs.size()), mixes.size());
        for (int i = 0; i < mixes.size(); i++) {
            assertEquals(number, mixes.get(i).ports());
            assertTrue(i == 0 || mixes.get(i - 1).portCost() <= mixes.get(i).portCost());
        }
    }

    @Test
    void withoutTypesThereIsNoChoice() {
        assertEquals(List.of(), all(List.of(), 3));
    }

    /** 4.6 million choices, of which a search may look at a few and be stopped. */
    @Test
    void choicesAreMadeWhenTheyAreAskedFor() {
        long start = System.nanoTime();
        Iterator<PortMix> mixes = PortMixes.of(options(List.of(100, 101, 102, 103, 104)), 100).iterator();
        assertEquals(List.of(100, 0, 0, 0, 0), mixes.next().counts());
        assertEquals(List.of(99, 1, 0, 0, 0), mixes.next().counts());
        assertTrue(System.nanoTime() - start < 1_000_000_000L, "made one by one");
        assertTrue(mixes.hasNext());
        assertFalse(all(options(List.of(5)), 100).size() > 1);
    }
}
