package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.amberyard.core.battery.TaperCurve;
import org.amberyard.core.depot.Port;
import org.junit.jupiter.api.Test;

class LeastCostSessionsTest {
    private static final int STEPS = SampleYard.DAY.steps();

    private static YardCharging leastCost(List<PortUnit> units, PlugIn... plugIns) {
        return YardCharging.of(SampleYard.stretch(plugIns), units, ChargeRule.of(ChargePolicy.LEAST_COST));
    }

    private static List<Session> sessions(YardCharging charging) {
        return new LeastCostSessions(charging).problem(new double[STEPS], new double[STEPS], new int[STEPS]).sessions();
    }

    /** From 16:10 to 06:05: a third of a step at either end. */
    @Test
    void stepsInWhichTheBusStandsInPartHaveThatPartOfItsPower() {
        YardCharging charging = leastCost(SampleYard.slow(1), SampleYard.bus(1, 970, 1440 + 365, 40));
        Session session = sessions(charging).get(0);
        assertEquals(List.of(64, 96 + 25), List.of(session.fromStep(), session.toStep()));
        assertEquals(1 / 3.0, session.share(64), 1e-12);
        assertEquals(1, session.share(65), 0);
        assertEquals(1, session.share(96 + 23), 0);
        assertEquals(1 / 3.0, session.share(96 + 24), 1e-12);
    }

    /** A bus that came at 10:05 and leaves at 10:00 the next day stands through the step in which it came in part. */
    @Test
    void aStayOfNearlyAWholeTurnEndsInTheStepInWhichItBegan() {
        YardCharging charging = leastCost(SampleYard.slow(1), SampleYard.bus(1, 605, 1440 + 602, 40));
        Session session = sessions(charging).get(0);
        assertEquals(96, session.toStep() - session.fromStep());
        assertEquals(12 / 15.0, session.share(40), 1e-12);
    }

    /** The last steps have the power of a pack that is filled at full power just in time: no more can be drawn in them. */
    @Test
    void theTaperLimitsTheLastSteps() {
        PlugIn bus = SampleYard.bus(1, 0, 300, 45, new BusAcceptance(0, 100, SampleYard.TAPERING));
        YardCharging charging = leastCost(PortUnit.of(SampleYard.FAST, 1, 1), bus);
        Session session = sessions(charging).get(0);
        double last = 1 - SampleYard.TAPERING.startShare(1, bus.acceptance().batteryKw(SampleYard.FAST), 0.25);
        assertEquals(last * SampleYard.TAPERING.usableKwh() / SampleYard.FAST.efficiency() * 4,
                session.share(19) * session.limitKw(), 1e-9);
        for (int step = 1; step < 20; step++) {
            assertTrue(session.share(step) <= session.share(step - 1));
        }
    }

    /** What no session of any hour of the taper's limit holds back is flat: it is drawn as planned, and nothing moves. */
    @Test
    void aFlatPlanWithinTheTaperIsTakenAsItIs() {
        PlugIn bus = SampleYard.bus(1, 0, 300, 45, new BusAcceptance(0, 100, SampleYard.TAPERING));
        LeastCostSessions sessions = new LeastCostSessions(leastCost(PortUnit.of(SampleYard.FAST, 1, 1), bus));
        int[] counted = new int[STEPS];
        Arrays.fill(counted, 1);
        MonthProblem month = new MonthProblem(List.of(sessions.problem(new double[STEPS], new double[STEPS], counted)),
                new double[] {1}, new double[1], Double.POSITIVE_INFINITY);
        LeastCostMonth solved = LeastCost.of(month);
        ChargeSchedule schedule = sessions.schedule(solved.schedule().kw().get(0), SpareKw.of(month, solved.schedule(), 0));
        assertEquals(0, schedule.movedKwh(), 1e-6);
        assertEquals(solved.lowerBound(), Arrays.stream(schedule.totalKw()).max().orElseThrow(), 1e-6);
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

    /** Two buses at a cabinet of 20 kW take 250 kWh from 17:30 to 6:30; whole hours alone give 240. */
    @Test
    void aCabinetLeavesNoBusShortWhoseStayIsNotOfWholeSteps() {
        Port cabinet = new Port("Cabinet", true, 20, 1.0, 0, 0, 0, 10, 20, 0, 2);
        BusAcceptance takes = new BusAcceptance(0, 60, new TaperCurve(200, 200, 0.999, 200));
        List<PlugIn> buses = IntStream.range(0, 2)
                .mapToObj(bus -> new PlugIn(bus, "Bus " + bus, 17.5 * 60, 30.5 * 60, 125, 1, takes)).toList();
        YardStretch stretch = new YardStretch(1, StepGrid.ofDays(1, 60), buses, SwapHours.always(1440));
        LeastCostSessions sessions = new LeastCostSessions(YardCharging.of(stretch, PortUnit.of(cabinet, 2, 1),
                ChargeRule.of(ChargePolicy.LEAST_COST)));
        MonthProblem month = new MonthProblem(List.of(sessions.problem(new double[24], new double[24], new int[24])), new double[0],
                new double[0], Double.POSITIVE_INFINITY);
        assertTrue(LeastCost.of(month).feasible());
    }

    @Test
    void aPlanThatThePackCanTakeStaysAsItIs() {
        YardCharging charging = leastCost(SampleYard.slow(1), SampleYard.bus(1, 970, 1440 + 365, 40));
        double[][] plan = new double[1][STEPS];
        plan[0][90] = 12.5;
        for (int step = 0; step < 15; step++) {
            plan[0][step] = 12.5;
        }
        ChargeSchedule schedule = new LeastCostSessions(charging).schedule(plan, SpareKw.unlimited(STEPS));
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
        ChargeSchedule schedule = new LeastCostSessions(charging).schedule(plan, SpareKw.unlimited(STEPS));
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
        ChargeSchedule schedule = new LeastCostSessions(charging).schedule(plan, SpareKw.unlimited(STEPS));
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
        ChargeSchedule schedule = new LeastCostSessions(charging).schedule(plan, SpareKw.unlimited(STEPS));
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
        double[][] taken = sessions.schedule(solved.schedule().kw().get(0), SpareKw.of(month, solved.schedule(), 0)).meterKw();
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
        ChargeSchedule schedule = new LeastCostSessions(charging).schedule(plan, SpareKw.unlimited(STEPS));
        assertEquals(session.meterKwh(), schedule.meterKwh(0), 1e-9);
        assertEquals(charging.schedule().endShares()[0], schedule.endShares()[0], 1e-12);
    }
}
