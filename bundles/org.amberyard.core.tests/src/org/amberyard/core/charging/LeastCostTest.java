package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Least-cost charging of months that can be solved by hand. */
class LeastCostTest {
    private static final double NONE = Double.POSITIVE_INFINITY;
    private static final double EXACT = 1e-8;

    private static StretchProblem day(double[] baseKw, double[] prices, List<Session> sessions) {
        int[] counted = new int[baseKw.length];
        Arrays.fill(counted, 1);
        return new StretchProblem(10, 1, baseKw, prices, counted, sessions, new double[0]);
    }

    private static LeastCostMonth solve(double demandPrice, double siteLimitKw, StretchProblem... stretches) {
        return LeastCost.of(new MonthProblem(List.of(stretches), new double[] {demandPrice}, new double[1], siteLimitKw));
    }

    @Test
    void onePriceFillsTheValleysOfTheBuilding() {
        StretchProblem day = day(new double[] {10, 30, 50, 20}, new double[] {0.1, 0.1, 0.1, 0.1},
                List.of(new Session(0, 4, 45, 100, Session.OWN_POWER)));
        LeastCostMonth month = solve(5, NONE, day);
        // The building's 50 kW are billed anyway, and 20 + 10 + 30 kWh lie below; the evenest load is 35 kW in three hours.
        assertEquals(50, month.schedule().demandKw()[0], EXACT);
        assertArrayEquals(new double[] {25, 5, 0, 15}, month.schedule().kw().get(0)[0], EXACT);
        assertEquals(10 * 0.1 * 155, month.schedule().energyCost(), EXACT);
    }

    @Test
    void peakRisesUntilItCostsMoreThanCheapEnergySaves() {
        StretchProblem day = day(new double[4], new double[] {0.1, 0.1, 0.3, 0.3},
                List.of(new Session(0, 4, 40, 100, Session.OWN_POWER)));
        // A further kW moves 2 kWh in 10 days by 0.2: worth 4.
        assertArrayEquals(new double[] {20, 20, 0, 0}, solve(3.9, NONE, day).schedule().kw().get(0)[0], EXACT);
        LeastCostMonth flat = solve(4.1, NONE, day);
        assertArrayEquals(new double[] {10, 10, 10, 10}, flat.schedule().kw().get(0)[0], EXACT);
        assertEquals(4.1 * 10 + 10 * (0.1 * 20 + 0.3 * 20), flat.schedule().cost(), EXACT);
        assertEquals(flat.schedule().cost(), flat.lowerBound(), EXACT);
    }

    @Test
    void sessionGoesOnAtTheStartOfItsStretch() {
        StretchProblem day = day(new double[4], new double[] {0.1, 0.1, 0.1, 0.1},
                List.of(new Session(3, 6, 30, 100, Session.OWN_POWER)));
        assertArrayEquals(new double[] {10, 10, 0, 10}, solve(1, NONE, day).schedule().kw().get(0)[0], EXACT);
    }

    @Test
    void busThatLeavesFirstChargesFirst() {
        StretchProblem day = day(new double[4], new double[] {0.1, 0.1, 0.1, 0.1},
                List.of(new Session(0, 4, 20, 10, Session.OWN_POWER), new Session(0, 2, 20, 10, Session.OWN_POWER)));
        LeastCostMonth month = solve(1, NONE, day);
        assertArrayEquals(new double[] {0, 0, 10, 10}, month.schedule().kw().get(0)[0], EXACT);
        assertArrayEquals(new double[] {10, 10, 0, 0}, month.schedule().kw().get(0)[1], EXACT);
    }

    @Test
    void demandChargeOfPeakHoursLeavesOtherHoursFree() {
        StretchProblem day = new StretchProblem(10, 1, new double[4], new double[] {0.3, 0.3, 0.2, 0.2}, new int[] {0, 0, 1, 1},
                List.of(new Session(0, 4, 40, 20, Session.OWN_POWER)), new double[0]);
        assertEquals(0, solve(2.1, NONE, day).schedule().demandKw()[0], EXACT);
        assertEquals(20, solve(1.9, NONE, day).schedule().demandKw()[0], EXACT);
    }

    @Test
    void stretchesShareTheMonthsPeak() {
        StretchProblem shortNight = day(new double[2], new double[] {0.1, 0.1},
                List.of(new Session(0, 2, 40, 100, Session.OWN_POWER)));
        StretchProblem day = day(new double[4], new double[] {0.1, 0.1, 0.3, 0.3},
                List.of(new Session(0, 4, 40, 100, Session.OWN_POWER)));
        // The short night needs 20 kW, so the other days have them for nothing.
        LeastCostMonth month = solve(4.1, NONE, day, shortNight);
        assertEquals(20, month.schedule().demandKw()[0], EXACT);
        assertArrayEquals(new double[] {20, 20, 0, 0}, month.schedule().kw().get(0)[0], EXACT);
    }

    @Test
    void cabinetSharesItsPower() {
        Session bus = new Session(0, 4, 24, 30, 0);
        StretchProblem day = new StretchProblem(10, 1, new double[4], new double[] {0.1, 0.2, 0.3, 0.4}, new int[4],
                List.of(bus, bus), new double[] {20});
        LeastCostMonth month = solve(0, NONE, day);
        assertArrayEquals(new double[] {20, 20, 8, 0},
                MonthSchedule.totalKw(day, month.schedule().kw().get(0)), EXACT);
    }

    @Test
    void sessionThatCannotBeReadyLacksEnergy() {
        StretchProblem day = day(new double[4], new double[] {0.1, 0.1, 0.1, 0.1},
                List.of(new Session(0, 4, 20, 10, Session.OWN_POWER), new Session(1, 4, 50, 10, Session.OWN_POWER)));
        LeastCostMonth month = solve(1, NONE, day);
        assertEquals(1, month.shortfalls().size());
        assertEquals(new SessionShortfall(0, 1, 20), month.shortfalls().get(0));
        assertArrayEquals(new double[] {0, 10, 10, 10}, month.schedule().kw().get(0)[1], EXACT);
    }

    @Test
    void siteLimitLeavesTheLeastEnergyShort() {
        Session bus = new Session(0, 2, 30, 100, Session.OWN_POWER);
        StretchProblem day = day(new double[] {10, 60}, new double[] {0.1, 0.1}, List.of(bus, bus));
        LeastCostMonth month = solve(1, 50, day);
        assertEquals(20, month.shortfalls().stream().mapToDouble(SessionShortfall::kwh).sum(), EXACT);
        assertEquals(60, month.schedule().demandKw()[0], EXACT);
    }

    @Test
    void monthWithoutChargingCostsItsFixedLoad() {
        LeastCostMonth month = solve(2, NONE, day(new double[] {10, 40}, new double[] {0.1, 0.2}, List.of()));
        assertEquals(10 * (1 + 8) + 80, month.schedule().cost(), EXACT);
        assertTrue(month.feasible());
    }
}
