package org.amberyard.core.variants;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.whatif.Band;
import org.amberyard.core.whatif.ContourLine;
import org.amberyard.core.whatif.Grid;
import org.amberyard.core.whatif.Miss;
import org.amberyard.core.whatif.SobolIndices;
import org.amberyard.core.whatif.SortedDraws;
import org.amberyard.core.whatif.Spread;
import org.amberyard.core.whatif.Tornado;
import org.amberyard.core.whatif.TornadoPlan;
import org.junit.jupiter.api.Test;

/** Plans of invented costs in variants, counted by hand; plan 0 is the baseline. */
class VariantsTest {
    private static final double[] PRICES = {2, 3, 4};
    private static final double[] GRANTS = {0, 10, 20};

    private static final VariedInputs INPUTS = new VariedInputs() {
        @Override
        public List<String> names() {
            return List.of("Price", "Grant");
        }

        @Override
        public List<String> groups() {
            return List.of("Market");
        }

        @Override
        public String words(int input, double value) {
            return names().get(input) + " " + value;
        }

        @Override
        public double shown(int input, double value) {
            return value;
        }

        @Override
        public String unit(int input) {
            return "";
        }

        @Override
        public long seed() {
            return 1;
        }

        @Override
        public boolean varies(int input) {
            return true;
        }
    };

    private static SobolIndices shares(double... first) {
        List<Band> bands = IntStream.range(0, first.length).mapToObj(i -> new Band(first[i], 0, 1)).toList();
        return new SobolIndices(bands, bands);
    }

    /** Costs are 100 + 10 price and 150 - grant. */
    private static OneAtATime oneAtATime() {
        TornadoPlan plan = new TornadoPlan(List.of(new Spread(PRICES[0], PRICES[1], PRICES[2]), new Spread(GRANTS[0], GRANTS[1], GRANTS[2])),
                List.of(List.of(0, 1)));
        double[][] costs = new double[2][plan.evaluations()];
        for (int e = 0; e < plan.evaluations(); e++) {
            costs[0][e] = 100 + 10 * plan.at(e)[0];
            costs[1][e] = 150 - plan.at(e)[1];
        }
        return new OneAtATime(plan, costs);
    }

    @Test
    void anInputMovesTheSavingByBothPlans() {
        OneAtATime one = oneAtATime();
        assertEquals(new Tornado.Bar(0, 120, 140), one.cost(0).bars().get(0));
        Tornado saving = one.saving(1, 0);
        assertEquals(-10, saving.base(), 1e-12, "130 less 140");
        assertEquals(List.of(new Tornado.Bar(2, -30, 10), new Tornado.Bar(0, -20, 0), new Tornado.Bar(1, -20, 0)), saving.bars());
        assertEquals(0, saving.lowInteraction(), 1e-12);
    }

    @Test
    void endsOfBarsAreSaidInTheWordsOfTheirInputs() {
        OneAtATime one = oneAtATime();
        assertEquals(new Spread(0, 10, 20), one.spread(1));
        assertEquals("Grant 0.0", one.words(INPUTS, 1, true));
        assertEquals("Price 4.0", one.words(INPUTS, 0, false));
        assertEquals("all low", one.words(INPUTS, 2, true));
        assertEquals("all high", one.words(INPUTS, 2, false));
        assertEquals(List.of("Price", "Grant", "Market"), IntStream.range(0, 3).mapToObj(INPUTS::name).toList());
    }

    /** The saving is 10 price - 20, so plans cost the same at a price of 2. */
    @Test
    void plansCostTheSameAlongALineOfTheGrid() {
        Grid grid = new Grid(new double[] {1, 3}, new double[] {0, 1});
        TwoTogether two = new TwoTogether(4, 7, grid, new double[][] {{110, 130, 110, 130}, {120, 120, 120, 120}}, 0);
        assertArrayEquals(new double[] {-10, 10, -10, 10}, two.saving(1), 1e-12);
        List<ContourLine> lines = two.breakEven(1);
        assertEquals(1, lines.size());
        assertTrue(lines.get(0).points().stream().allMatch(p -> Math.abs(p.first() - 2) < 1e-9));
        assertEquals(List.of(4, 7), List.of(two.first(), two.second()));
        assertSame(grid, two.grid());
    }

    @Test
    void scenariosKeepTheirFigures() {
        Scenarios scenarios = new Scenarios(List.of("Low", "High"), new double[][] {{1, 2}, {3, 4}}, new double[][] {{5, 6}, {7, 8}});
        assertEquals(List.of("Low", "High"), scenarios.names());
        assertEquals(3, scenarios.presentCost(1, 0));
        assertEquals(6, scenarios.co2eKg(0, 1));
    }

    /** A gallon is 3.785411784 litres. */
    @Test
    void aPriceIsShownInTheUnitsOfTheSystem() {
        PriceFan fan = new PriceFan("Diesel", "USD/L", List.of(SortedDraws.of(1, 2)));
        PriceFan gallons = fan.in(UnitSystem.US, "USD");
        assertEquals("USD/gal", gallons.unit());
        assertEquals(2 * 3.785411784, gallons.years().get(0).quantile(1), 1e-9);
        assertEquals(2, fan.in(UnitSystem.METRIC, "USD").years().get(0).quantile(1), 1e-12);
        PriceFan index = new PriceFan("Index", "of 2026", List.of(SortedDraws.of(1)));
        assertSame(index, index.in(UnitSystem.US, "USD"));
    }

    @Test
    void inputsThatExplainATwentiethDecide() {
        VarianceShares variance = new VarianceShares(List.of("Price", "Grant", "Wind"), new double[0][], 0, 1, 1, null);
        assertEquals(List.of(1, 0), VarianceShares.deciding(shares(0.05, 0.66, 0.04)));
        assertEquals("Grant and Price explain 71 % of the variance", variance.explained(shares(0.05, 0.66, 0.04)));
        assertEquals("Grant explains 66 % of the variance", variance.explained(shares(0.01, 0.66, 0.04)));
        assertEquals("Wind, Grant and Price explain 100 % of the variance", variance.explained(shares(0.3, 0.35, 0.6)), "no more than all");
        assertEquals("", variance.explained(shares(0.01, 0.02, 0.04)));
        assertEquals(0.5, VarianceShares.together(shares(0.5, -0.1, 0.2), List.of(0, 1)), 1e-12, "below zero by chance counts as nothing");
    }

    /** Rows of A, B and A with one input of B each: the saving is x + 3 y of even numbers, so y explains nine tenths. */
    @Test
    void sharesAreThoseOfTheSaving() {
        int rows = 4096;
        double[][] costs = new double[2][rows * 4];
        for (int row = 0; row < rows; row++) {
            double[] a = {(row * 0.754877666) % 1, (row * 0.569840291) % 1};
            double[] b = {(row * 0.438579021 + 0.5) % 1, (row * 0.322295736 + 0.5) % 1};
            double[] results = {a[0] + 3 * a[1], b[0] + 3 * b[1], b[0] + 3 * a[1], a[0] + 3 * b[1]};
            for (int i = 0; i < 4; i++) {
                costs[0][4 * row + i] = 10 + 2 * results[i];
                costs[1][4 * row + i] = 10 + results[i];
            }
        }
        VarianceShares alone = new VarianceShares(List.of("x", "y"), costs, 0, 7, 1, null);
        assertEquals(0.1, alone.ofSaving(1).first().get(0).value(), 0.02);
        assertEquals(0.9, alone.ofSaving(1).first().get(1).value(), 0.02);
        assertTrue(alone.intervals().startsWith("from rows drawn again"));
        VarianceShares several = new VarianceShares(List.of("x", "y"), costs, 0, 7, 8, null);
        assertEquals(0.9, several.ofSaving(1).total().get(1).value(), 0.02);
        assertEquals("from the scatter of 8 independent samples (Student)", several.intervals());
    }

    @Test
    void surfacesAreGoodEnoughUpToWhatIsAllowed() {
        FitErrors errors = new FitErrors(59, List.of(Miss.NONE), List.of(Miss.NONE), List.of(), List.of(), List.of());
        assertTrue(new FitCheck(errors, 200, 0.05, 0.05).goodEnough());
        assertFalse(new FitCheck(errors, 200, 0.051, 0.05).goodEnough());
        assertTrue(new FitCheck(errors, 200, Double.POSITIVE_INFINITY, 0).goodEnough(), "0 allows anything");
        assertEquals(Collections.nCopies(1, Miss.NONE), errors.savings());
    }
}
