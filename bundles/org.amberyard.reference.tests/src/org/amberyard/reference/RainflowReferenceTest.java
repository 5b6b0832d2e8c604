package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.amberyard.core.battery.Rainflow;
import org.amberyard.core.battery.Rainflow.Cycle;
import org.junit.jupiter.api.Test;

class RainflowReferenceTest {

    /**
     * The worked example of ASTM E1049-85, "Standard Practices for Cycle Counting in Fatigue Analysis", section 5.4.4, figure 6,
     * from memory and counted anew by hand.
     */
    @Test
    void workedExample() {
        assertEquals(List.of(new Cycle(3, -0.5, 0.5), new Cycle(4, -1, 0.5), new Cycle(4, 1, 1), new Cycle(8, 1, 0.5),
                new Cycle(9, 0.5, 0.5), new Cycle(8, 0, 0.5), new Cycle(6, 1, 0.5)),
                Rainflow.of(-2, 1, -3, 5, -1, 3, -4, 4, -2));
    }

    /** A day's charge, invented; cycles counted by hand. */
    @Test
    void chargeOfADay() {
        List<Cycle> cycles = Rainflow.of(0.90, 0.75, 0.80, 0.55, 0.90, 0.70, 0.72, 0.40, 0.90);
        assertEquals(1, count(cycles, 0.05, 0.775), 0);
        assertEquals(1, count(cycles, 0.35, 0.725), 0);
        assertEquals(1, count(cycles, 0.02, 0.71), 0);
        assertEquals(1, count(cycles, 0.50, 0.65), 0);
        assertEquals(0.92, cycles.stream().mapToDouble(c -> c.range() * c.count()).sum(), 1e-12);
    }

    private static double count(List<Cycle> cycles, double range, double mean) {
        return cycles.stream().filter(c -> Math.abs(c.range() - range) < 1e-9 && Math.abs(c.mean() - mean) < 1e-9)
                .mapToDouble(Cycle::count).sum();
    }

    /** Histories without a cycle: by the definition of a cycle, no source. */
    @Test
    void edges() {
        assertEquals(List.of(), Rainflow.of());
        assertEquals(List.of(), Rainflow.of(0.5, 0.5, 0.5));
        assertEquals(List.of(new Cycle(1, 0.5, 0.5)), Rainflow.of(1, 0));
        assertEquals(List.of(new Cycle(1, 0.5, 0.5)), Rainflow.of(0, 0.25, 0.25, 0.75, 1));
        assertEquals(Rainflow.of(1, 0, 1), Rainflow.of(1, 1, 0, 0, 1, 1));
    }
}
