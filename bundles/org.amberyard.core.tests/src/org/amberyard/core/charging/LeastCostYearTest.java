package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Years under a ratchet, by hand. */
class LeastCostYearTest {
    private static final double EXACT = 1e-6;

    private static MonthProblem month(double kwh, double demandPrice) {
        Session session = new Session(0, 4, kwh, 100, Session.OWN_POWER);
        return new MonthProblem(List.of(new StretchProblem(10, 1, new double[4], new double[] {0.1, 0.1, 0.3, 0.3},
                new int[] {1, 1, 1, 1}, List.of(session), new double[0])), new double[] {demandPrice}, new double[1],
                Double.POSITIVE_INFINITY);
    }

    @Test
    void ratchetMakesAPeakDearer() {
        List<MonthProblem> year = List.of(month(40, 3), month(0, 3), month(0, 3));
        // A further kW saves 4 in the first month and costs 3 there, and with the ratchet also half of 3 in the others.
        assertArrayEquals(new double[] {20}, LeastCostYear.of(year, new double[] {0}).peaksKw(), EXACT);
        LeastCostYear ratcheted = LeastCostYear.of(year, new double[] {0.5});
        assertArrayEquals(new double[] {10}, ratcheted.peaksKw(), EXACT);
        assertEquals(5, ratcheted.months().get(1).schedule().demandKw()[0], EXACT);
        assertEquals(10 * (0.1 * 20 + 0.3 * 20) + 3 * (10 + 5 + 5), ratcheted.cost(), EXACT);
    }

    @Test
    void demandThatTheRatchetBillsAnywayIsUsed() {
        List<MonthProblem> year = List.of(month(40, 5), month(20, 5), month(80, 5));
        LeastCostYear found = LeastCostYear.of(year, new double[] {0.4});
        // 80 kWh need 20 kW; 8 kW are billed in the month of 20 kWh, which has a use for them.
        assertArrayEquals(new double[] {20}, found.peaksKw(), EXACT);
        assertArrayEquals(new double[] {8, 8, 2, 2}, found.months().get(1).schedule().kw().get(0)[0], EXACT);
    }
}
