package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Years under a ratchet, by hand and held against a linear programme of all their months. */
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

    @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
    void costsWhatALinearProgrammeCosts(@ForAll long seed) {
        Random random = new Random(seed);
        int charges = 1 + random.nextInt(3);
        List<MonthProblem> year = year(random, charges);
        double[] shares = IntStream.range(0, charges).mapToDouble(c -> Math.min(1, 1.5 * random.nextDouble())).toArray();
        shares[0] = random.nextBoolean() ? 0 : shares[0];
        LeastCostYear found = LeastCostYear.of(year, shares);
        assertEquals(0, found.gap(), 1e-7 * (1 + Math.abs(found.lowerBound())));
        if (found.months().stream().allMatch(LeastCostMonth::feasible)) {
            double lowestCost = ScheduleProgram.lowestCost(year, shares);
            assertEquals(lowestCost, found.cost(), 1e-6 * (1 + Math.abs(lowestCost)));
        }
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void isNotDearerThanMonthByMonth(@ForAll long seed) {
        Random random = new Random(seed);
        List<MonthProblem> year = year(random, 1);
        double share = random.nextDouble();
        List<MonthSchedule> alone = year.stream().map(month -> LeastCost.of(month).schedule()).toList();
        double peakKw = IntStream.range(0, year.size()).mapToDouble(month -> MonthSchedule.of(
                year.get(month).with(new double[1], new double[1]), alone.get(month).kw()).demandKw()[0]).max().orElseThrow();
        double ratcheted = IntStream.range(0, year.size()).mapToDouble(month -> MonthSchedule.of(year.get(month).with(
                year.get(month).demandPrices(), new double[] {Math.max(share * peakKw, year.get(month).demandFloorsKw()[0])}),
                alone.get(month).kw()).cost()).sum();
        double cost = LeastCostYear.of(year, new double[] {share}).cost();
        assertTrue(cost <= ratcheted + 1e-7 * (1 + Math.abs(ratcheted)), () -> cost + " is above " + ratcheted);
    }

    private static List<MonthProblem> year(Random random, int charges) {
        List<MonthProblem> year = new ArrayList<>();
        while (year.size() < 4) {
            MonthProblem month = RandomMonths.small(random.nextLong());
            if (month.demandPrices().length == charges) {
                year.add(month);
            }
        }
        return year;
    }
}
