package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** The least-cost schedule of random months, held against a linear programme and against other schedules. */
class LeastCostPropertyTest {
    private static final double FEASIBLE = 1e-9;

    @Property(tries = 400, edgeCases = EdgeCasesMode.NONE)
    void costsWhatALinearProgrammeCosts(@ForAll long seed) {
        MonthProblem month = RandomMonths.small(seed);
        double lowestCost = ScheduleProgram.lowestCost(month);
        LeastCostMonth found = LeastCost.of(month);
        assertEquals(!Double.isNaN(lowestCost), found.feasible());
        if (found.feasible()) {
            assertEquals(lowestCost, found.schedule().cost(), 1e-6 * (1 + Math.abs(lowestCost)));
        }
    }

    @Property(tries = 6, edgeCases = EdgeCasesMode.NONE)
    void costsWhatALinearProgrammeCostsInAYard(@ForAll long seed) {
        MonthProblem month = RandomMonths.yard(seed, 12, 2);
        double lowestCost = ScheduleProgram.lowestCost(month);
        assertEquals(lowestCost, LeastCost.of(month).schedule().cost(), 1e-6 * lowestCost);
    }

    @Property(tries = 30, edgeCases = EdgeCasesMode.NONE)
    void provesItsCostInALargeYard(@ForAll long seed) {
        LeastCostMonth found = LeastCost.of(RandomMonths.yard(seed, 60, 4));
        assertEquals(0, found.gap(), 1e-8 * found.lowerBound());
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void aMonthAThousandTimesAsLargeCostsAThousandTimesAsMuch(@ForAll long seed) {
        MonthProblem month = RandomMonths.yard(seed, 20, 3);
        LeastCostMonth found = LeastCost.of(month);
        LeastCostMonth large = LeastCost.of(times(month, 997));
        assertEquals(997 * found.lowerBound(), large.lowerBound(), 1e-8 * (1 + Math.abs(large.lowerBound())));
        assertEquals(0, large.gap(), 1e-8 * (1 + Math.abs(large.lowerBound())));
    }

    private static MonthProblem times(MonthProblem month, double factor) {
        List<StretchProblem> stretches = month.stretches().stream().map(s -> new StretchProblem(s.times(), s.stepHours(),
                times(s.baseKw(), factor), s.pricePerKwh(), s.demandSets(), s.sessions().stream().map(session -> new Session(
                        session.fromStep(), session.toStep(), factor * session.meterKwh(), factor * session.limitKw(), session.cabinet(),
                        session.firstShare(), session.lastShares())).toList(),
                times(s.cabinetKw(), factor))).toList();
        return new MonthProblem(stretches, month.demandPrices(), times(month.demandFloorsKw(), factor), factor * month.siteLimitKw());
    }

    private static double[] times(double[] values, double factor) {
        return Arrays.stream(values).map(v -> factor * v).toArray();
    }

    @Property(tries = 400, edgeCases = EdgeCasesMode.NONE)
    void provesItsCost(@ForAll long seed) {
        LeastCostMonth found = LeastCost.of(RandomMonths.small(seed));
        assertEquals(0, found.gap(), 1e-8 * (1 + Math.abs(found.lowerBound())));
    }

    @Property(tries = 400, edgeCases = EdgeCasesMode.NONE)
    void keepsEveryLimitAndDeliversTheEnergy(@ForAll long seed) {
        MonthProblem month = RandomMonths.small(seed);
        LeastCostMonth found = LeastCost.of(month);
        for (int place = 0; place < month.stretches().size(); place++) {
            StretchProblem stretch = month.stretches().get(place);
            double[][] kw = found.schedule().kw().get(place);
            checkSessions(stretch, kw, lackingKwh(found, place, kw.length));
            checkSharedPower(month, stretch, kw);
        }
    }

    private static double[] lackingKwh(LeastCostMonth found, int place, int sessions) {
        double[] lacking = new double[sessions];
        found.shortfalls().stream().filter(s -> s.stretch() == place).forEach(s -> lacking[s.session()] = s.kwh());
        return lacking;
    }

    private static void checkSessions(StretchProblem stretch, double[][] kw, double[] lackingKwh) {
        for (int place = 0; place < kw.length; place++) {
            Session session = stretch.sessions().get(place);
            double[] outside = kw[place].clone();
            for (int step = session.fromStep(); step < session.toStep(); step++) {
                outside[step % outside.length] = 0;
            }
            assertArrayEquals(new double[outside.length], outside);
            double[] ofSession = kw[place];
            assertTrue(IntStream.range(session.fromStep(), session.toStep()).allMatch(step -> ofSession[step % ofSession.length] >= 0
                    && ofSession[step % ofSession.length] <= session.limitKw() * session.share(step) + FEASIBLE));
            assertEquals(session.meterKwh() - lackingKwh[place], Arrays.stream(kw[place]).sum() * stretch.stepHours(), FEASIBLE);
        }
    }

    private static void checkSharedPower(MonthProblem month, StretchProblem stretch, double[][] kw) {
        double[] totalKw = MonthSchedule.totalKw(stretch, kw);
        for (int step = 0; step < stretch.steps(); step++) {
            int now = step;
            assertTrue(totalKw[step] <= Math.max(month.siteLimitKw(), stretch.baseKw()[step]) + FEASIBLE);
            for (int cabinet = 0; cabinet < stretch.cabinetKw().length; cabinet++) {
                int one = cabinet;
                double cabinetKw = IntStream.range(0, kw.length).filter(s -> stretch.sessions().get(s).cabinet() == one)
                        .mapToDouble(s -> kw[s][now]).sum();
                assertTrue(cabinetKw <= stretch.cabinetKw()[cabinet] + FEASIBLE);
            }
        }
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void isNotDearerThanTheScheduleForOtherPrices(@ForAll long seed) {
        MonthProblem month = RandomMonths.small(seed);
        Random random = new Random(~seed);
        MonthProblem otherPrices = month.with(month.stretches().stream().map(s -> new StretchProblem(s.times(), s.stepHours(),
                s.baseKw(), random.doubles(s.steps()).toArray(), s.demandSets(), s.sessions(), s.cabinetKw())).toList())
                .with(random.doubles(month.demandPrices().length).toArray(), month.demandFloorsKw());
        LeastCostMonth other = LeastCost.of(otherPrices);
        if (other.feasible()) {
            notAbove(MonthSchedule.of(month, other.schedule().kw()).cost(), cost(month));
        }
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void isNotDearerThanChargingEvenlyOrAtOnce(@ForAll long seed) {
        MonthProblem month = onOwnPower(RandomMonths.small(seed));
        double lowest = cost(month);
        notAbove(MonthSchedule.of(month, schedule(month, true)).cost(), lowest);
        notAbove(MonthSchedule.of(month, schedule(month, false)).cost(), lowest);
    }

    private static MonthProblem onOwnPower(MonthProblem month) {
        List<StretchProblem> own = month.stretches().stream().map(s -> new StretchProblem(s.times(), s.stepHours(), s.baseKw(),
                s.pricePerKwh(), s.demandSets(), s.sessions().stream().map(LeastCostPropertyTest::onOwnPower).toList(),
                s.cabinetKw())).toList();
        return new MonthProblem(own, month.demandPrices(), month.demandFloorsKw(), Double.POSITIVE_INFINITY);
    }

    private static Session onOwnPower(Session session) {
        return new Session(session.fromStep(), session.toStep(), session.meterKwh(), session.limitKw(), Session.OWN_POWER);
    }

    private static List<double[][]> schedule(MonthProblem month, boolean evenly) {
        List<double[][]> kw = new ArrayList<>();
        for (StretchProblem stretch : month.stretches()) {
            double[][] ofStretch = new double[stretch.sessions().size()][stretch.steps()];
            for (int place = 0; place < ofStretch.length; place++) {
                Session session = stretch.sessions().get(place);
                double leftKwh = session.meterKwh();
                double hours = (session.toStep() - session.fromStep()) * stretch.stepHours();
                for (int step = session.fromStep(); step < session.toStep(); step++) {
                    double power = evenly ? session.meterKwh() / hours
                            : Math.min(session.limitKw(), leftKwh / stretch.stepHours());
                    ofStretch[place][step % stretch.steps()] = power;
                    leftKwh -= power * stretch.stepHours();
                }
            }
            kw.add(ofStretch);
        }
        return kw;
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void longerAtThePlugIsNotDearer(@ForAll long seed) {
        MonthProblem month = RandomMonths.small(seed);
        if (LeastCost.of(month).feasible()) {
            notAbove(cost(month),
                    cost(month.with(month.stretches().stream().map(LeastCostPropertyTest::laterDeparture).toList())));
        }
    }

    private static StretchProblem laterDeparture(StretchProblem stretch) {
        List<Session> sessions = stretch.sessions().stream().map(s -> new Session(s.fromStep(),
                Math.min(s.toStep() + 1, s.fromStep() + stretch.steps()), s.meterKwh(), s.limitKw(), s.cabinet())).toList();
        return new StretchProblem(stretch.times(), stretch.stepHours(), stretch.baseKw(), stretch.pricePerKwh(),
                stretch.demandSets(), sessions, stretch.cabinetKw());
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void morePowerIsNotDearer(@ForAll long seed) {
        MonthProblem month = RandomMonths.small(seed);
        if (LeastCost.of(month).feasible()) {
            MonthProblem stronger = new MonthProblem(month.stretches().stream().map(s -> new StretchProblem(s.times(),
                    s.stepHours(), s.baseKw(), s.pricePerKwh(), s.demandSets(), s.sessions(),
                    Arrays.stream(s.cabinetKw()).map(kw -> kw + 7).toArray())).toList(), month.demandPrices(),
                    month.demandFloorsKw(), month.siteLimitKw() + 5);
            notAbove(cost(month), cost(stronger));
        }
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void higherFloorIsNotCheaper(@ForAll long seed) {
        MonthProblem month = RandomMonths.small(seed);
        double[] higher = Arrays.stream(month.demandFloorsKw()).map(kw -> kw + 13).toArray();
        notAbove(cost(month.with(month.demandPrices(), higher)), cost(month));
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void answersAgainAsIfAskedAnew(@ForAll long seed) {
        MonthProblem month = RandomMonths.small(seed);
        LeastCostSolver kept = new LeastCostSolver(month);
        Random random = new Random(~seed);
        for (int ask = 0; ask < 5; ask++) {
            double[] prices = random.doubles(month.demandPrices().length, 0, 2).toArray();
            double[] floors = random.doubles(prices.length, 0, 80).toArray();
            double factor = 2 * random.nextDouble();
            double anew = new LeastCostSolver(month).bill(prices, floors, factor).cost();
            assertEquals(anew, kept.bill(prices, floors, factor).cost(), 1e-8 * (1 + Math.abs(anew)));
        }
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void findsTheSameScheduleEachTime(@ForAll long seed) {
        List<double[][]> once = LeastCost.of(RandomMonths.small(seed)).schedule().kw();
        List<double[][]> again = LeastCost.of(RandomMonths.small(seed)).schedule().kw();
        assertTrue(Arrays.deepEquals(once.toArray(), again.toArray()));
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void isNotDearerThanChargingWithoutHindsight(@ForAll long seed) {
        MonthProblem month = RandomMonths.small(seed);
        notAbove(RollingCharge.of(month).cost(), cost(month));
    }

    private static double cost(MonthProblem month) {
        return LeastCost.of(month).schedule().cost();
    }

    private static void notAbove(double upper, double cost) {
        assertTrue(cost <= upper + 1e-8 * (1 + Math.abs(upper)), () -> cost + " is above " + upper);
    }
}
