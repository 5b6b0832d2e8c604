package org.amberyard.core.whatif;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.stat.descriptive.moment.Variance;
import org.junit.jupiter.api.Test;

class DrawStatisticsTest {

    private static double[] normal(int draws, long seed) {
        Draws values = new Draws(new RandomPoints(seed, 1), List.of(new Normal(1e6, 3)));
        return IntStream.range(0, draws).mapToDouble(d -> values.at(d, 0)).toArray();
    }

    @Property(tries = 100)
    void partsJoinToTheWhole(@ForAll long seed, @ForAll @IntRange(min = 2, max = 900) int draws,
            @ForAll @IntRange(min = 0, max = 900) int cut) {
        double[] values = normal(draws, seed);
        int middle = Math.min(cut, draws);
        Moments whole = Moments.of(values);
        Moments joined = Moments.of(values, 0, middle).plus(Moments.of(values, middle, draws));
        assertEquals(whole.mean(), joined.mean(), 1e-9);
        assertEquals(whole.variance(), joined.variance(), 1e-9 * whole.variance());
        assertEquals(new Variance().evaluate(values), whole.variance(), 1e-9 * whole.variance());
    }

    @Test
    void varianceNeedsTwo() {
        assertThrows(IllegalArgumentException.class, () -> Moments.of(1.0).variance());
        assertEquals(4.0 / 3, Moments.of(1, 3, 3, 1).variance(), 1e-15);
        assertEquals(Math.sqrt(1.0 / 3), Moments.of(1, 3, 3, 1).standardError(), 1e-15);
    }

    @Test
    void quantilesAndExceedanceByHand() {
        SortedDraws draws = SortedDraws.of(5, 1, 3, 2, 4);
        assertEquals(3, draws.quantile(0.5), 0);
        assertEquals(1.4, draws.quantile(0.1), 1e-12);
        assertEquals(5, draws.quantile(1), 0);
        assertEquals(0.4, draws.exceeded(3), 0);
        assertEquals(1, draws.exceeded(0.5), 0);
        assertEquals(List.of(new SortedDraws.Exceedance(1, 1), new SortedDraws.Exceedance(3, 0.5),
                new SortedDraws.Exceedance(5, 0)), draws.exceedance(2));
        assertEquals(7, SortedDraws.of(7).quantile(0.3), 0);
        assertThrows(IllegalArgumentException.class, () -> SortedDraws.of(1, Double.NaN));
    }

    @Test
    void chanceOfNothingSeenIsNotNothing() {
        for (int draws = 1; draws < 3000; draws++) {
            assertEquals(0, new Chance(0, draws).band(0.95).low(), 0, draws + " draws");
            assertEquals(1, new Chance(draws, draws).band(0.95).high(), 0, draws + " draws");
        }
        assertTrue(new Chance(0, 20).band(0.95).high() > 0.1);
        assertThrows(IllegalArgumentException.class, () -> new Chance(3, 2));
    }

    @Test
    void plansByHand() {
        PlanDraws plans = PlanDraws.of(new double[] {10, 20, 30, 40}, new double[] {12, 18, 30, 50},
                new double[] {11, 30, 25, 60});
        assertEquals(new Chance(2, 4), plans.cheaper(0, 1));
        assertEquals(new Chance(1, 4), plans.cheaper(1, 0));
        assertArrayEquals(new double[] {-2, 2, 0, -10}, plans.difference(0, 1), 0);
        assertArrayEquals(new double[] {0, 2, 5, 0}, plans.regret(0), 0);
        assertArrayEquals(new double[] {2, 0, 5, 10}, plans.regret(1), 0);
        assertThrows(IllegalArgumentException.class, () -> PlanDraws.of(new double[2], new double[3]));
    }

    /** Costs of 1 to 100 and a budget of 90: one draw in twenty is above 95.05. */
    @Test
    void budgetRiskByHand() {
        SortedDraws cost = SortedDraws.of(IntStream.rangeClosed(1, 100).asDoubleStream().toArray());
        BudgetRisk risk = BudgetRisk.of(cost, 90, 0.95);
        assertEquals(1 + 0.95 * 99 - 90, risk.atRisk(), 1e-9);
        assertEquals(new Chance(10, 100), risk.over());
    }

    /**
     * The mean of a sum of inputs, mean by mean; replicates tell an error that is far smaller than that of independent
     * draws.
     */
    @Test
    void replicatesTellTheErrorOfEvenSamples() {
        List<Distribution> inputs = List.of(new Uniform(0, 2), new Triangular(0, 1, 5), new Normal(4, 1));
        double truth = inputs.stream().mapToDouble(Distribution::mean).sum();
        Draws even = new Draws(ReplicatedPoints.of(9, 16, s -> SobolPoints.scrambled(s, 3)), inputs);
        double[] sums = IntStream.range(0, 4096)
                .mapToDouble(d -> IntStream.range(0, 3).mapToDouble(i -> even.at(d, i)).sum())
                .toArray();
        List<Convergence> course = Convergence.of(sums, 16, 1024);
        Convergence last = course.get(3);
        assertEquals(4096, last.draws());
        assertEquals(truth, last.mean(), 4 * last.standardError());
        assertTrue(last.standardError() < Moments.of(sums).standardError() / 10);
        assertEquals(1, Convergence.of(sums, 1, 1024).get(3).standardError() / Moments.of(sums).standardError(), 1e-3);
    }

    /** In the first draw both are the cheapest, in the second and the third one each. */
    @Test
    void plansThatCostTheSameAreBothTheBest() {
        PlanDraws plans = PlanDraws.of(new double[] {1, 2, 5}, new double[] {1, 3, 4}, new double[] {9, 9, 9});
        assertEquals(List.of(2L, 2L, 0L), List.of(plans.best(0).hits(), plans.best(1).hits(), plans.best(2).hits()));
    }

    @Test
    void barsCountWhatLiesInThem() {
        assertEquals(List.of(new Histogram.Bar(0, 1, 2), new Histogram.Bar(1, 2, 1), new Histogram.Bar(2, 3, 2)),
                Histogram.of(new double[] {0, 0.5, 1, 2.5, 3, 7}, 0, 3, 3));
        assertEquals(List.of(new Histogram.Bar(4, 4, 2)), Histogram.of(new double[] {4, 4}, 4, 4, 10));
    }
}
