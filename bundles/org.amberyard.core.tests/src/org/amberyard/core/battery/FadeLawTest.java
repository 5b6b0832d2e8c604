package org.amberyard.core.battery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class FadeLawTest {
    private static final double HOURS_PER_YEAR = 8760;
    private static final List<FadeLaw> LAWS = List.of(new LinearFade(0.015, 0.00005), new LfpFade(), new NmcFade());

    /** Hotter never lasts longer. */
    @Property
    void hotter(@ForAll @DoubleRange(min = -20, max = 50) double packC, @ForAll @DoubleRange(min = 0, max = 10) double by,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        for (FadeLaw law : LAWS) {
            assertTrue(health(law, still(packC + by, share, 200, 0.5, 0.3)) <= health(law, still(packC, share, 200, 0.5, 0.3)));
        }
    }

    /** As many swings, each deeper, never last longer. */
    @Property
    void deeper(@ForAll @DoubleRange(min = 0.05, max = 0.5) double depth, @ForAll @DoubleRange(min = 0, max = 0.5) double by) {
        for (FadeLaw law : LAWS) {
            assertTrue(health(law, still(20, 0.5, 200, depth + by, 0.3)) <= health(law, still(20, 0.5, 200, depth, 0.3)));
        }
    }

    /** More throughput never lasts longer. */
    @Property
    void more(@ForAll @DoubleRange(min = 0, max = 400) double cycles, @ForAll @DoubleRange(min = 0, max = 400) double by) {
        for (FadeLaw law : LAWS) {
            assertTrue(health(law, still(20, 0.5, cycles + by, 0.5, 0.3)) <= health(law, still(20, 0.5, cycles, 0.5, 0.3)));
        }
    }

    /** A year in two parts is a year, and the order of years of different stress does not matter. */
    @Property
    void yearsAddUp(@ForAll @DoubleRange(min = 0.01, max = 0.99) double part,
            @ForAll @DoubleRange(min = 5, max = 40) double packC) {
        for (FadeLaw law : LAWS) {
            FadeRate one = law.rate(still(packC, 0.9, 150, 0.4, 0.3));
            FadeRate other = law.rate(still(20, 0.5, 300, 0.7, 0.5));
            double whole = FadeState.NEW.after(one, 1).after(other, 1).health();
            assertEquals(whole, FadeState.NEW.after(one, part).after(one, 1 - part).after(other, 1).health(), 1e-12);
            assertEquals(whole, FadeState.NEW.after(other, 1).after(one, 1).health(), 1e-12);
        }
    }

    private static double health(FadeLaw law, PackStress stress) {
        return FadeState.NEW.after(law.rate(stress), 8).health();
    }

    static PackStress still(double packC, double chargeShare, double cyclesPerYear, double depth, double powerPerHour) {
        return new PackStress(List.of(new PackStress.Dwell(packC, chargeShare, HOURS_PER_YEAR)),
                List.of(new PackStress.Cycle(depth, 0.5, cyclesPerYear, powerPerHour)), cyclesPerYear * depth);
    }
}
