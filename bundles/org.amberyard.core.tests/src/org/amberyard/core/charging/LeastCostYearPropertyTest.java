package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Random years under a ratchet, held against a linear programme of all their months. */
class LeastCostYearPropertyTest {
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
        assertNotDearer(year, share, year.stream().map(month -> LeastCost.of(month).schedule()).toList());
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void isNotDearerThanDayByDay(@ForAll long seed) {
        Random random = new Random(seed);
        List<MonthProblem> year = year(random, 1);
        double share = random.nextBoolean() ? 0 : random.nextDouble();
        assertNotDearer(year, share, RollingCharge.ofYear(year, new double[] {share}));
    }

    private static void assertNotDearer(List<MonthProblem> year, double share, List<MonthSchedule> others) {
        double peakKw = IntStream.range(0, year.size()).mapToDouble(month -> MonthSchedule.of(
                year.get(month).with(new double[1], new double[1]), others.get(month).kw()).demandKw()[0]).max().orElseThrow();
        double ratcheted = IntStream.range(0, year.size()).mapToDouble(month -> MonthSchedule.of(year.get(month).with(
                year.get(month).demandPrices(), new double[] {Math.max(share * peakKw, year.get(month).demandFloorsKw()[0])}),
                others.get(month).kw()).cost()).sum();
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
