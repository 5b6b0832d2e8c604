package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** 40 kWh in four hours at 0.1, 0.1, 0.3, 0.3 per kWh on ten days, by hand. */
class LeastCostBillTest {
    private static final LeastCostSolver MONTH = new LeastCostSolver(new MonthProblem(List.of(new StretchProblem(10, 1, new double[4],
            new double[] {0.1, 0.1, 0.3, 0.3}, new int[] {1, 1, 1, 1}, List.of(new Session(0, 4, 40, 100, Session.OWN_POWER)), new double[0])),
            new double[1], new double[1], Double.POSITIVE_INFINITY));

    private static void assertBill(LeastCostBill bill, double levelKw, double energyCost, double demandCost) {
        assertEquals(levelKw, bill.levelsKw()[0], 1e-8);
        assertEquals(energyCost, bill.energyCost(), 1e-8);
        assertEquals(demandCost, bill.demandCost(), 1e-8);
        assertEquals(energyCost + demandCost, bill.cost(), 1e-8);
        assertEquals(0, bill.gap(), 1e-8);
    }

    /** A kW more moves 2 kWh on ten days by 0.2: worth 4, or 8 at twice the price of energy. */
    @Test
    void demandIsPaidWhereEnergySavesIt() {
        assertBill(MONTH.bill(new double[] {3.9}, new double[1], 1), 20, 40, 78);
        assertBill(MONTH.bill(new double[] {4.1}, new double[1], 1), 10, 80, 41);
        assertBill(MONTH.bill(new double[] {4.1}, new double[1], 2), 20, 80, 82);
    }

    /** 15 kW are billed anyway: 30 kWh at the low price, ten at the high. */
    @Test
    void whatIsBilledAnywayIsUsed() {
        assertBill(MONTH.bill(new double[] {4.1}, new double[] {15}, 1), 15, 10 * (3 + 3), 61.5);
    }

    /** Without a price nothing holds the level but what the session can draw. */
    @Test
    void demandWithoutAPriceIsWhatCanBeDrawn() {
        assertBill(MONTH.bill(new double[1], new double[] {15}, 1), 100, 40, 0);
    }
}
