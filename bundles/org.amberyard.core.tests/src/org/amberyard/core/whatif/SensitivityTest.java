package org.amberyard.core.whatif;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SensitivityTest {
    private static final SobolIndices.Bootstrap BOOTSTRAP = new SobolIndices.Bootstrap(200, 0.95, 1);

    /** f = 3a + 2b + ab: together beyond the single changes is the product of the steps. */
    @Test
    void tornadoByHand() {
        TornadoPlan plan = new TornadoPlan(List.of(new Spread(9, 10, 12), new Spread(4, 5, 9)));
        Tornado tornado = tornado(plan, x -> 3 * x[0] + 2 * x[1] + x[0] * x[1]);
        assertEquals(30 + 10 + 50, tornado.base(), 0);
        assertEquals(List.of(new Tornado.Bar(1, 78, 138), new Tornado.Bar(0, 82, 106)), tornado.bars());
        assertEquals(60, tornado.bars().get(0).swing(), 0);
        assertEquals(2 * 4, tornado.highInteraction(), 1e-12);
        assertEquals(1, tornado.lowInteraction(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> Tornado.of(plan, new double[3]));
    }

    private static Tornado tornado(TornadoPlan plan, ToDoubleFunction<double[]> result) {
        return Tornado.of(plan, IntStream.range(0, plan.evaluations()).mapToObj(plan::at).mapToDouble(result).toArray());
    }

    @Test
    void equalBarsKeepTheOrderOfTheInputs() {
        TornadoPlan plan = new TornadoPlan(List.of(new Spread(0, 1, 2), new Spread(2, 1, 0), new Spread(0, 1, 2)));
        assertEquals(List.of(0, 1, 2), tornado(plan, x -> x[0] + x[1] + x[2]).bars().stream().map(Tornado.Bar::input)
                .toList());
        assertEquals(new Spread(0.1, 0.4, 0.9), Spread.of(new Uniform(0, 1), 0.4, 0.1, 0.9));
    }

    /** f = 3a + 2b + 10c with a and c as a group: its bar moves both, and what is left beyond the inputs does not count it. */
    @Test
    void aGroupIsVariedTogether() {
        Spread spread = new Spread(0, 1, 2);
        TornadoPlan plan = new TornadoPlan(List.of(spread, spread, spread), List.of(List.of(0, 2)));
        assertEquals(11, plan.evaluations());
        Tornado tornado = tornado(plan, x -> 3 * x[0] + 2 * x[1] + 10 * x[2]);
        assertEquals(List.of(new Tornado.Bar(3, 2, 28), new Tornado.Bar(2, 5, 25), new Tornado.Bar(0, 12, 18), new Tornado.Bar(1, 13, 17)),
                tornado.bars());
        assertEquals(List.of(0.0, 0.0), List.of(tornado.lowInteraction(), tornado.highInteraction()));
    }

    /** f = x0 + 2 x1: intervals of eight Sobol samples hold the share of 4/5 about as often as they say, and are narrower than those of rows. */
    @Test
    void intervalsOfSamplesHoldTheShare() {
        int held = 0;
        double samples = 0;
        double again = 0;
        for (int seed = 0; seed < 100; seed++) {
            IndexPlan plan = IndexPlan.ofEach(ReplicatedPoints.of(seed, 8, s -> SobolPoints.scrambled(s, 4)));
            double[] results = IntStream.range(0, 8 * 32 * plan.perRow()).mapToDouble(e -> plan.at(e, 0) + 2 * plan.at(e, 1)).toArray();
            Band total = SobolIndices.ofSamples(results, 2, 8, 0.95).total().get(1);
            Band rows = SobolIndices.of(results, 2, BOOTSTRAP).total().get(1);
            held += total.holds(0.8) ? 1 : 0;
            samples += total.high() - total.low();
            again += rows.high() - rows.low();
        }
        assertTrue(held >= 88, held + " of 100 intervals hold the share");
        assertTrue(samples < again, samples + " and " + again);
        assertThrows(IllegalArgumentException.class, () -> SobolIndices.ofSamples(new double[4 * 15], 2, 8, 0.95));
    }

    @Test
    void rowsOfAPlanTakeOneGroupFromTheSecondPoint() {
        UnitPoints sample = new RandomPoints(8, 6);
        IndexPlan plan = new IndexPlan(sample, 0, 1, 0);
        assertEquals(4, plan.perRow());
        double[][] row = IntStream.range(8, 12)
                .mapToObj(e -> IntStream.range(0, 3).mapToDouble(i -> plan.at(e, i)).toArray())
                .toArray(double[][]::new);
        assertArrayEquals(new double[] {sample.at(2, 0), sample.at(2, 1), sample.at(2, 2)}, row[0], 0);
        assertArrayEquals(new double[] {sample.at(2, 3), sample.at(2, 4), sample.at(2, 5)}, row[1], 0);
        assertArrayEquals(new double[] {row[1][0], row[0][1], row[1][2]}, row[2], 0);
        assertArrayEquals(new double[] {row[0][0], row[1][1], row[0][2]}, row[3], 0);
        assertThrows(IllegalArgumentException.class, () -> new IndexPlan(sample, 0, 2, 0));
        assertThrows(IllegalArgumentException.class, () -> new IndexPlan(sample, 0, 1));
    }

    /** f = x0 + 2 x1 + 3 x2 with inputs of variance 1/12: shares 1, 4 and 9 of 14; grouped 10 and 4. */
    @Test
    void sharesOfASum() {
        SobolIndices each = indices(IndexPlan.ofEach(SobolPoints.scrambled(4, 6)), 1024);
        SobolIndices grouped = indices(new IndexPlan(SobolPoints.scrambled(4, 6), 0, 1, 0), 1024);
        for (int input = 0; input < 3; input++) {
            double share = (input + 1) * (input + 1) / 14.0;
            assertEquals(share, each.first().get(input).value(), 0.01);
            assertEquals(share, each.total().get(input).value(), 0.01);
            assertTrue(each.total().get(input).holds(share));
        }
        assertEquals(10 / 14.0, grouped.first().get(0).value(), 0.01);
        assertEquals(4 / 14.0, grouped.total().get(1).value(), 0.01);
    }

    /** f = 5 x0 + x1 by 100 rows: the share 25 of 26 scatters by less than a hundredth, and that of the other input by a tenth. */
    @Test
    void fewRowsTellAShareNearAll() {
        List<SobolIndices> found = IntStream.range(0, 40).mapToObj(seed -> {
            IndexPlan plan = IndexPlan.ofEach(new RandomPoints(seed, 4));
            return SobolIndices.of(IntStream.range(0, 100 * plan.perRow()).mapToDouble(e -> 5 * plan.at(e, 0) + plan.at(e, 1)).toArray(), 2,
                    BOOTSTRAP);
        }).toList();
        Moments large = Moments.of(found.stream().mapToDouble(i -> i.first().get(0).value()).toArray());
        Moments small = Moments.of(found.stream().mapToDouble(i -> i.first().get(1).value()).toArray());
        assertEquals(25.0 / 26, large.mean(), 0.005);
        assertTrue(large.sd() < 0.01, "scatter " + large.sd());
        assertEquals(1.0 / 26, small.mean(), 0.05);
        assertTrue(small.sd() < 0.12, "scatter " + small.sd());
    }

    private static SobolIndices indices(IndexPlan plan, int rows) {
        double[] results = IntStream.range(0, rows * plan.perRow())
                .mapToDouble(e -> plan.at(e, 0) + 2 * plan.at(e, 1) + 3 * plan.at(e, 2)).toArray();
        return SobolIndices.of(results, plan.groups(), BOOTSTRAP);
    }

    @Test
    void aResultThatDoesNotVaryHasNoShares() {
        assertEquals(new Band(0, 0, 0), SobolIndices.of(new double[40], 2, BOOTSTRAP).first().get(0));
        assertThrows(IllegalArgumentException.class, () -> SobolIndices.of(new double[7], 2, BOOTSTRAP));
    }

    /** Inputs that are correlated make a group, which explains all of their sum. */
    @Test
    void correlatedInputsAsAGroup() {
        List<String> names = List.of("a", "b", "c", "a'", "b'", "c'");
        CorrelatedPoints sample = CorrelatedPoints.of(new LatinHypercube(1, 4000, 6), 4000, names,
                List.of(new RankCorrelation(0, 1, 0.8), new RankCorrelation(3, 4, 0.8)));
        IndexPlan plan = new IndexPlan(sample, 0, 0, 1);
        double[] results = IntStream.range(0, 4000 * plan.perRow())
                .mapToDouble(e -> plan.at(e, 0) + plan.at(e, 1) + plan.at(e, 2)).toArray();
        SobolIndices indices = SobolIndices.of(results, 2, BOOTSTRAP);
        assertEquals(3.6 / 4.6, indices.first().get(0).value(), 0.02);
        assertEquals(1 / 4.6, indices.total().get(1).value(), 0.02);
    }
}
