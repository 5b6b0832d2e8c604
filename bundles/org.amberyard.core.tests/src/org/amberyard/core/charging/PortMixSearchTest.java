package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Three buses that need 60 kWh each in ten hours of the night, slow ports at 1,000 a year and fast ones at 4,500. */
class PortMixSearchTest {
    private static final List<PortOption> OPTIONS = List.of(new PortOption(SampleYard.SLOW, 1, 1000, 10),
            new PortOption(SampleYard.FAST, 1, 4500, 10));

    private static YardStretch nights(SwapHours hours) {
        PlugIn[] buses = new PlugIn[3];
        for (int bus = 0; bus < 3; bus++) {
            buses[bus] = SampleYard.bus(bus + 1, 1200, 1440 + 360, 60);
        }
        return new YardStretch(180, SampleYard.DAY, SampleYard.stretch(hours, buses).plugIns(), hours);
    }

    private static List<PortMix> mixes(SwapHours hours, double payPerSwap) {
        return new PortMixSearch(OPTIONS, List.of(nights(hours)), ChargeRule.of(ChargePolicy.AT_ONCE), payPerSwap).byNumber();
    }

    /**
     * One fast port with two swaps a night; two ports: a slow one holds one bus, so the other must be fast; three slow ones
     * without swaps.
     */
    @Test
    void cheapestForEachNumber() {
        List<PortMix> mixes = mixes(SwapHours.always(1440), 10);
        assertEquals(List.of(0, 1), mixes.get(0).counts());
        assertEquals(4500 + 180 * 2 * 10, mixes.get(0).cost(), 1e-9);
        assertEquals(List.of(1, 1), mixes.get(1).counts());
        assertEquals(5500 + 180 * 10, mixes.get(1).cost(), 1e-9);
        assertEquals(List.of(3, 0), mixes.get(2).counts());
        assertEquals(3000, mixes.get(2).cost(), 1e-9);
        assertEquals(3, PortMixSearch.cheapest(mixes).orElseThrow().ports());
    }

    /** With nobody at night only a port for each bus serves. */
    @Test
    void withoutSwapsEachBusNeedsAPort() {
        List<PortMix> mixes = mixes(SwapHours.never(1440), 0);
        assertEquals(1, mixes.size());
        assertEquals(List.of(3, 0), mixes.get(0).counts());
    }

    /** A hard stretch beside the easy one decides. */
    @Test
    void everyStretchMustBeServed() {
        YardStretch easy = nights(SwapHours.always(1440));
        YardStretch hard = easy.with(easy.plugIns().stream().map(p -> p.withKwh(100)).toList());
        List<PortMix> mixes = new PortMixSearch(OPTIONS, List.of(easy, hard.with(hard.plugIns().stream()
                .map(p -> new PlugIn(p.bus(), p.label(), p.fromMin(), p.toMin() - 120, 100, 1, p.acceptance())).toList())),
                ChargeRule.of(ChargePolicy.AT_ONCE), 0).byNumber();
        assertEquals(List.of(0, 1), mixes.get(0).counts());
        assertTrue(mixes.stream().noneMatch(m -> m.counts().get(1) == 0), "100 kWh in 8 h are too much for slow ports");
    }
}
