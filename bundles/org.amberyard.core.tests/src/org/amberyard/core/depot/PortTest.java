package org.amberyard.core.depot;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What a bus can count on, with invented ports. */
class PortTest {
    private static final Port AC = new Port("AC", false, 19.2, 0.9, 15, 3000, 5000, 10, 30, 240);
    private static final Port SLOW_DC = new Port("DC 24", true, 24, 0.95, 60, 20_000, 15_000, 10, 30, 600);
    private static final Port FAST_DC = new Port("DC 60", true, 60, 0.95, 100, 40_000, 25_000, 10, 30, 600, 2);

    @Test
    void aBusCountsOnTheBestAcPort() {
        assertEquals(19.2 * 0.9, Port.countedKw(List.of(FAST_DC, AC), 22, 150), 1e-12);
        assertEquals(11 * 0.9, Port.countedKw(List.of(AC, FAST_DC), 11, 150), 1e-12, "no more than the bus takes");
    }

    @Test
    void onTheBestDcPortWhereThereIsNoAcForIt() {
        assertEquals(60 * 0.95, Port.countedKw(List.of(SLOW_DC, FAST_DC), 22, 150), 1e-12);
        assertEquals(60 * 0.95, Port.countedKw(List.of(AC, SLOW_DC, FAST_DC), 0, 150), 1e-12, "the bus takes no AC");
        assertEquals(30, Port.countedKw(List.of(SLOW_DC, FAST_DC), 0, 30), 1e-12);
        assertEquals(0, Port.countedKw(List.of(), 22, 150));
    }

    /** Yards are told apart by what they charge with, not by what it costs. */
    @Test
    void withoutItsPricesAPortChargesAsBefore() {
        assertEquals(new Port("DC 60", true, 60, 0.95, 100, 0, 0, 10, 30, 0, 2), FAST_DC.unpriced());
    }
}
