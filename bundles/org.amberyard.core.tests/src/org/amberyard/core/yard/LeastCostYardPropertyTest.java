package org.amberyard.core.yard;

import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.tariff.BillParts;

/** Yards and tariffs of every kind: least cost is never dearer than any other policy that serves. */
class LeastCostYardPropertyTest {
    private static final double CENT = 0.01;
    private static final double ROUNDED_KWH = 0.5;

    private static double cost(YardYear year) {
        BillParts parts = year.parts();
        return parts.energy() + year.input().demandIndex() * parts.demand() + parts.fixed();
    }

    private static double peakKw(YardYear year) {
        return year.input().metering().shared() ? year.servicePeakKw() : year.yardPeakKw();
    }

    @Property(tries = 80, edgeCases = EdgeCasesMode.NONE)
    void leastCostIsNeverDearerThanAPolicyThatServes(@ForAll long seed) {
        YardInput yard = new RandomYards(seed).yard();
        YardYear least = YardYear.of(yard);
        for (ChargePolicy policy : ChargePolicy.values()) {
            YardYear other = YardYear.of(yard.under(policy));
            if (other.totalMissingKwh() < ROUNDED_KWH && peakKw(other) <= yard.siteLimitKw()) {
                assertTrue(least.totalMissingKwh() < 2 * ROUNDED_KWH,
                        () -> policy + " serves, least cost misses " + least.totalMissingKwh());
                assertTrue(cost(least) <= cost(other) + 2 * CENT,
                        () -> policy + " costs " + cost(other) + ", least cost " + cost(least));
            }
        }
    }

    /** The gap is the room between the bill and what no schedule undercuts, so no policy at the same plugs closes more than it. */
    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void noGapIsBelowNothing(@ForAll long seed) {
        YardYear least = YardYear.of(new RandomYards(seed).yard());
        double gap = least.months().stream().mapToDouble(m -> m.costGap().orElse(0)).sum();
        assertTrue(gap > -CENT, () -> "gap " + gap);
    }
}
