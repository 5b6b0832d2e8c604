package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class LeastCostSessionsTest {
    private static final int STEPS = SampleYard.DAY.steps();

    private static YardCharging leastCost(List<PortUnit> units, PlugIn... plugIns) {
        return YardCharging.of(SampleYard.stretch(plugIns), units, ChargeRule.of(ChargePolicy.LEAST_COST));
    }

    private static List<Session> sessions(YardCharging charging) {
        return new LeastCostSessions(charging).problem(new double[STEPS], new double[STEPS], new int[STEPS]).sessions();
    }

    /** From 16:10 to 06:05: whole steps from 16:15 to 06:00. */
    @Test
    void aSessionSpansWholeSteps() {
        YardCharging charging = leastCost(SampleYard.slow(1), SampleYard.bus(1, 970, 1440 + 365, 40));
        assertEquals(List.of(new Session(65, 96 + 24, 50, 12.5, Session.OWN_POWER)), sessions(charging));
    }

    /** 136 minutes of charging in 150 minutes from 16:10 to 18:40: whole steps give only 135. */
    @Test
    void partStepsCountWhereTheyAreNeeded() {
        YardCharging charging = leastCost(SampleYard.slow(1), SampleYard.bus(1, 970, 1120, 10 * 136 / 60.0));
        Session session = sessions(charging).get(0);
        assertEquals(64, session.fromStep());
        assertEquals(75, session.toStep());
    }

    @Test
    void asksForWhatFullPowerCanStore() {
        YardCharging charging = leastCost(SampleYard.slow(1), SampleYard.bus(1, 0, 120, 50));
        assertEquals(25, sessions(charging).get(0).meterKwh(), 1e-9);
        assertEquals(30, charging.schedule().shortKwh(), 1e-9);
    }

    @Test
    void plugsOfACabinetShareItsPower() {
        YardCharging charging = leastCost(PortUnit.of(SampleYard.FAST, 2, 1), SampleYard.bus(1, 0, 600, 50),
                SampleYard.bus(2, 0, 600, 50));
        StretchProblem problem = new LeastCostSessions(charging).problem(new double[STEPS], new double[STEPS],
                new int[STEPS]);
        assertArrayEquals(new double[] {60}, problem.cabinetKw());
        assertEquals(List.of(0, 0), problem.sessions().stream().map(Session::cabinet).toList());
    }

    @Test
    void aPlanThatThePackCanTakeStaysAsItIs() {
        YardCharging charging = leastCost(SampleYard.slow(1), SampleYard.bus(1, 970, 1440 + 365, 40));
        double[][] plan = new double[1][STEPS];
        plan[0][90] = 12.5;
        for (int step = 0; step < 15; step++) {
            plan[0][step] = 12.5;
        }
        ChargeSchedule schedule = new LeastCostSessions(charging).schedule(plan);
        assertArrayEquals(plan[0], schedule.meterKw()[0], 1e-9);
        assertEquals(0, schedule.movedKwh(), 1e-9);
        assertTrue(schedule.shortfalls().isEmpty());
    }

    /** Full power early is more than the pack takes near full, so the rest moves to the steps after it. */
    @Test
    void whatThePackCannotTakeMovesToLaterSteps() {
        PlugIn bus = SampleYard.bus(1, 0, 300, 45, new BusAcceptance(0, 100, SampleYard.TAPERING));
        YardCharging charging = leastCost(PortUnit.of(SampleYard.FAST, 1, 1), bus);
        double[][] plan = new double[1][STEPS];
        plan[0][0] = 60;
        plan[0][1] = 60;
        plan[0][2] = 60;
        plan[0][3] = 20;
        ChargeSchedule schedule = new LeastCostSessions(charging).schedule(plan);
        double[] kw = schedule.meterKw()[0];
        assertEquals(60, kw[1], 1e-9);
        assertTrue(kw[2] < 60 && kw[3] > 20);
        assertEquals(50, schedule.meterKwh(0), 1e-9);
        double later = 0;
        for (int step = 3; step < STEPS; step++) {
            later += (kw[step] - plan[0][step]) / 4;
        }
        assertEquals(later, schedule.movedKwh(), 1e-9);
    }

    /** Everything planned for the last hour, in which the taper leaves no time: the bus starts before, and is ready. */
    @Test
    void chargesEarlierWhereTheTaperLeavesNoTime() {
        PlugIn bus = SampleYard.bus(1, 0, 300, 45, new BusAcceptance(0, 100, SampleYard.TAPERING));
        YardCharging charging = leastCost(PortUnit.of(SampleYard.FAST, 1, 1), bus);
        double[][] plan = new double[1][STEPS];
        plan[0][17] = 60;
        plan[0][18] = 60;
        plan[0][19] = 80;
        ChargeSchedule schedule = new LeastCostSessions(charging).schedule(plan);
        assertTrue(schedule.shortfalls().isEmpty());
        assertEquals(50, schedule.meterKwh(0), 1e-9);
        assertTrue(schedule.meterKw()[0][16] > 0);
        assertEquals(0, schedule.meterKw()[0][10], 0);
    }

    /** A site that has only 5 kW of the 12.5 for the one step of the stay: the plan's 1.25 kWh stand, and the rest is missing. */
    @Test
    void whatTheSiteCannotGiveStaysMissing() {
        YardCharging charging = leastCost(SampleYard.slow(1), SampleYard.bus(1, 0, 15, 2));
        double[][] plan = new double[1][STEPS];
        plan[0][0] = 5;
        ChargeSchedule schedule = new LeastCostSessions(charging).schedule(plan);
        assertEquals(5, schedule.meterKw()[0][0], 1e-9);
        assertEquals(1, schedule.shortKwh(), 1e-9);
    }

    /** Three buses at two ports under a price that doubles by day and a demand charge: solved, taken, and no dearer. */
    @Test
    void solvedAndTaken() {
        PlugIn[] buses = {SampleYard.bus(1, 960, 1440 + 330, 40), SampleYard.bus(2, 960, 1440 + 360, 20),
            SampleYard.bus(3, 960, 1440 + 390, 30)};
        YardCharging charging = leastCost(SampleYard.slow(2), buses);
        double[] prices = new double[STEPS];
        int[] demandSets = new int[STEPS];
        for (int step = 0; step < STEPS; step++) {
            prices[step] = step < 24 ? 0.1 : 0.2;
            demandSets[step] = 1;
        }
        LeastCostSessions sessions = new LeastCostSessions(charging);
        MonthProblem month = new MonthProblem(List.of(sessions.problem(new double[STEPS], prices, demandSets)),
                new double[] {0.3}, new double[1], Double.POSITIVE_INFINITY);
        LeastCostMonth solved = LeastCost.of(month);
        double[][] taken = sessions.schedule(solved.schedule().kw().get(0)).meterKw();
        assertEquals(solved.schedule().cost(), MonthSchedule.of(month, Collections.singletonList(taken)).cost(), 1e-6);
        YardStretch stretch = SampleYard.stretch(buses);
        for (YardCharging other : List.of(SampleYard.atOnce(stretch, SampleYard.slow(2)),
                SampleYard.spread(stretch, SampleYard.slow(2)))) {
            double cost = MonthSchedule.of(month, Collections.singletonList(other.schedule().meterKw())).cost();
            assertTrue(solved.schedule().cost() < cost - 0.5, "least cost against " + cost);
        }
    }

    /** Whatever the plan, what full power can store is stored. */
    @Property(tries = 200)
    void everyPlanBecomesOneThatHasTheBusesReady(@ForAll @DoubleRange(min = 0, max = 1) double early,
            @ForAll @DoubleRange(min = 1, max = 90) double needKwh, @ForAll @DoubleRange(min = 60, max = 500) double stayMin) {
        PlugIn bus = SampleYard.bus(1, 1200, 1200 + stayMin, needKwh, new BusAcceptance(0, 100, SampleYard.TAPERING));
        YardCharging charging = leastCost(PortUnit.of(SampleYard.FAST, 1, 1), bus);
        Session session = sessions(charging).get(0);
        int last = Math.max(0, session.toStep() - session.fromStep() - 1);
        double[][] plan = new double[1][STEPS];
        plan[0][session.fromStep() % STEPS] += early * session.meterKwh() * 4;
        plan[0][(session.fromStep() + last) % STEPS] += (1 - early) * session.meterKwh() * 4;
        ChargeSchedule schedule = new LeastCostSessions(charging).schedule(plan);
        assertEquals(session.meterKwh(), schedule.meterKwh(0), 1e-9);
        assertEquals(charging.schedule().endShares()[0], schedule.endShares()[0], 1e-12);
    }
}
