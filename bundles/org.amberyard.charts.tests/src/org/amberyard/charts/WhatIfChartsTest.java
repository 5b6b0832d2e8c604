package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.amberyard.core.money.BreakEven;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.variants.AllTogether;
import org.amberyard.core.variants.BreakEvenLine;
import org.amberyard.core.variants.BreakEvenSurface;
import org.amberyard.core.variants.BreakEvens;
import org.amberyard.core.variants.BreakEvensAlone;
import org.amberyard.core.variants.FitErrors;
import org.amberyard.core.variants.OneAtATime;
import org.amberyard.core.variants.PriceFan;
import org.amberyard.core.variants.Scenarios;
import org.amberyard.core.variants.TwoTogether;
import org.amberyard.core.variants.VarianceShares;
import org.amberyard.core.variants.VariedInputs;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.BreakEvenCurve;
import org.amberyard.core.whatif.ContourLine;
import org.amberyard.core.whatif.Grid;
import org.amberyard.core.whatif.Miss;
import org.amberyard.core.whatif.RunEnd;
import org.amberyard.core.whatif.SortedDraws;
import org.amberyard.core.whatif.Spread;
import org.amberyard.core.whatif.TornadoPlan;
import org.amberyard.testsupport.SampleDistrict;
import org.jfree.chart.plot.XYPlot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Charts of a what-if made by hand: plan 1 saves 100 per unit of A and loses 30 per unit of B, both from 0 to 2. */
class WhatIfChartsTest {
    private static final StudyResult BASE = SampleDistrict.evaluated(SampleDistrict.small());
    private static final int PLAN = 1;
    private static final int DRAWS = 400;
    private static final long SEED = 20_261;
    private static final VariedInputs INPUTS = new VariedInputs() {
        @Override
        public List<String> names() {
            return List.of("A", "B");
        }

        @Override
        public List<String> groups() {
            return List.of("Both");
        }

        @Override
        public String words(int input, double value) {
            return String.valueOf(value);
        }

        @Override
        public double shown(int input, double value) {
            return 100 * value;
        }

        @Override
        public String unit(int input) {
            return "%";
        }

        @Override
        public long seed() {
            return SEED;
        }

        @Override
        public boolean varies(int input) {
            return true;
        }
    };

    private static double cost(int plan, double a, double b) {
        return plan == BASE.input().baseline() ? 1000 : 1000 - 100 * a + 30 * b + 20;
    }

    private static double[][] costs(double[][] points) {
        return IntStream.range(0, BASE.plans().size()).mapToObj(plan -> Arrays.stream(points).mapToDouble(p -> cost(plan, p[0], p[1]))
                .toArray()).toArray(double[][]::new);
    }

    private static WhatIfResults nothing() {
        return new WhatIfResults(BASE, INPUTS, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of(), List.of(), Optional.empty(),
                Optional.empty(), BreakEvens.NONE);
    }

    private static WhatIfResults results() {
        return results(FitErrors.none(BASE));
    }

    private static WhatIfResults results(FitErrors missed) {
        TornadoPlan plan = new TornadoPlan(List.of(new Spread(0, 1, 2), new Spread(0, 1, 2)), List.of(List.of(0, 1)));
        Random random = new Random(1);
        double[][] drawn = new double[DRAWS][];
        Arrays.setAll(drawn, i -> new double[] {2 * random.nextDouble(), 2 * random.nextDouble()});
        Grid grid = new Grid(Grid.steps(0, 2, 5), Grid.steps(0, 2, 5));
        double[][][] appropriations = new double[BASE.plans().size()][BASE.input().years()][];
        for (double[][] years : appropriations) {
            Arrays.setAll(years, year -> Arrays.stream(drawn).mapToDouble(p -> 1000 * p[0]).toArray());
        }
        double[][] rows = new double[4 * 50][];
        for (int row = 0; row < 50; row++) {
            double[] a = {2 * random.nextDouble(), 2 * random.nextDouble()};
            double[] b = {2 * random.nextDouble(), 2 * random.nextDouble()};
            rows[4 * row] = a;
            rows[4 * row + 1] = b;
            rows[4 * row + 2] = new double[] {b[0], a[1]};
            rows[4 * row + 3] = new double[] {a[0], b[1]};
        }
        BreakEven at = new BreakEven(List.of(new BreakEven.Stretch(0, 0.5, BreakEven.Cheaper.OTHER, false, 0),
                new BreakEven.Stretch(0.5, 4, BreakEven.Cheaper.PLAN, false, 0)));
        return new WhatIfResults(BASE, INPUTS,
                Optional.of(new OneAtATime(plan, costs(IntStream.range(0, plan.evaluations()).mapToObj(plan::at).toArray(double[][]::new)))),
                Optional.of(new Scenarios(List.of("S"), costs(new double[][] {{2, 0}}), costs(new double[][] {{2, 0}}))), Optional.empty(),
                Optional.of(new AllTogether(BASE, new RunEnd(DRAWS, RunEnd.Reason.COMPLETE), costs(drawn), appropriations,
                        new double[DRAWS], 8, missed)),
                List.of(new PriceFan("price of fuel, diesel", "USD/L", IntStream.range(0, BASE.input().years()).mapToObj(year -> SortedDraws.of(
                        Arrays.stream(drawn).mapToDouble(p -> 1 + p[0] * year).toArray())).toList())),
                List.of(), Optional.of(new TwoTogether(0, 1, grid, costs(IntStream.range(0, grid.evaluations())
                        .mapToObj(e -> new double[] {grid.first(e), grid.second(e)}).toArray(double[][]::new)), BASE.input().baseline())),
                Optional.of(new VarianceShares(List.of("A", "B"), costs(rows), BASE.input().baseline(), 1, 1, missed)),
                new BreakEvens(Optional.of(new BreakEvensAlone(List.of(0, 1), BASE.plans().stream().map(p -> List.of(at, new BreakEven(List.of(
                        new BreakEven.Stretch(0, 2, BreakEven.Cheaper.OTHER, false, 3))))).toList())),
                        Optional.of(new BreakEvenLine(0, 1, 0, 4, BASE.plans().stream().map(p -> List.of(new BreakEvenCurve(1, at))).toList())),
                        Optional.of(new BreakEvenSurface(0, 1, 1, new Grid(new double[] {1, 2}, new double[] {3, 4}), 0, 4, BASE.plans().stream()
                                .map(p -> List.of(at, at, jump(BreakEven.Cheaper.PLAN), new BreakEven(List.of()))).toList()))));
    }

    private static BreakEven jump(BreakEven.Cheaper above) {
        return new BreakEven(List.of(new BreakEven.Stretch(0, 3, BreakEven.Cheaper.OTHER, true, 50),
                new BreakEven.Stretch(3, 4, above, false, -50)));
    }

    @Test
    void theSurfaceHasAValueInEachCellOrNone() {
        Chart chart = WhatIfChart.SURFACE.of(results(), PLAN, UnitSystem.METRIC, ChartTheme.light());
        assertEquals(List.of(List.of(1.0, 3.0, "0.5"), List.of(2.0, 3.0, "0.5"), List.of(1.0, 4.0, "3.0 ↕"), List.of(2.0, 4.0, "none")),
                chart.data().rows());
        assertTrue(chart.textAlternative().contains("the difference jumps there"), chart.textAlternative());
        assertTrue(chart.textAlternative().contains("B goes in equal steps from 0.0 to 2.0, its low and high; the study’s own, 1.0, is none of them."),
                chart.textAlternative());
        assertFalse(chart.textAlternative().contains("A goes in equal steps"), "the study's own is among its values");
        assertTrue(chart.textAlternative().contains("In 1 of 4 cells there is none."), chart.textAlternative());
    }

    @Test
    void whatWouldHaveToBeTrueIsSaidOfEachInput() {
        Chart chart = WhatIfChart.ALONE.of(results(), PLAN, UnitSystem.METRIC, ChartTheme.light());
        assertEquals(List.of(List.of("A", "0.0", "4.0", "0.5"), List.of("B", "0.0", "2.0", "none")), chart.data().rows());
        assertTrue(chart.textAlternative().contains("1 of 2 changes within its range"), chart.textAlternative());
        assertTrue(chart.textAlternative().contains("never cheaper"), chart.textAlternative());
    }

    @ParameterizedTest
    @EnumSource(WhatIfChart.class)
    void everyChartHasWordsAndFigures(WhatIfChart kind) {
        for (ChartTheme theme : List.of(ChartTheme.light(), ChartTheme.dark())) {
            Chart chart = kind.of(results(), PLAN, UnitSystem.METRIC, theme);
            assertFalse(chart.textAlternative().isBlank());
            assertFalse(chart.data().rows().isEmpty(), chart.title());
            assertTrue(ChartExport.svg(chart, 900, chart.preferredHeight()).contains("<desc>"));
        }
    }

    @ParameterizedTest
    @EnumSource(WhatIfChart.class)
    void whatIsNotWorkedOutYetIsSaid(WhatIfChart kind) {
        Chart chart = kind.of(nothing(), PLAN, UnitSystem.METRIC, ChartTheme.light());
        assertTrue(chart.textAlternative().toLowerCase(Locale.ROOT).contains("not worked out yet"), chart.textAlternative());
        assertEquals(List.of(), chart.data().rows());
    }

    /** With A and B at 1 the plan saves 50; A by itself moves that by 200, B by 60. */
    @Test
    void theTornadoHasTheWidestInputFirst() {
        Chart chart = WhatIfChart.TORNADO.of(results(), PLAN, UnitSystem.METRIC, ChartTheme.light());
        assertEquals(List.of("A", "%", 0.0, 100.0, 200.0, -50.0, 50.0, 150.0), chart.data().rows().get(0));
        assertEquals(Arrays.asList("Both", "", "all low", null, "all high", -20.0, 50.0, 120.0), chart.data().rows().get(1));
        assertEquals(List.of("B", "%", 0.0, 100.0, 200.0, 80.0, 50.0, 20.0), chart.data().rows().get(2));
        assertTrue(chart.textAlternative().contains("saves USD 50"), chart.textAlternative());
    }

    @Test
    void theGridTellsWhereBothCostTheSame() {
        Chart chart = WhatIfChart.GRID.of(results(), PLAN, UnitSystem.METRIC, ChartTheme.light());
        assertTrue(chart.textAlternative().contains("On the line both cost the same."), chart.textAlternative());
        assertEquals(List.of("Saving (USD): B down, A across", "0", "0.5", "1", "1.5", "2"), chart.data().columns());
        assertEquals(5, chart.data().rows().size());
        assertEquals(List.of(0.5, -35.0, 15.0, 65.0, 115.0, 165.0), chart.data().rows().get(1), "B at 0.5, A from 0 to 2");
    }

    /** Savings go from −80 to 180: bands of 50, of which the lines bear the amounts. */
    @Test
    void theGridHasLinesAtRoundSavings() {
        XYPlot plot = (XYPlot) WhatIfChart.GRID.of(results(), PLAN, UnitSystem.METRIC, ChartTheme.light()).chart().getPlot();
        List<ContourLabels.Label> labels = ((ContourLabels) plot.getAnnotations().get(0)).labels();
        assertEquals(List.of("−50", "50", "100", "150"), labels.stream().map(ContourLabels.Label::amount).toList());
        assertEquals(4 + 1 + 1, plot.getDataset(1).getSeriesCount(), "a line for each, that of costing the same, the point of the study");
        ContourLine.Point hundred = labels.get(2).points().get(0);
        assertEquals(100, 100 * hundred.first() - 30 * hundred.second() - 20, 1e-9, "the amount stands on its line");
    }

    @Test
    void bandsAreRoundAndStrongestFarFromCostingTheSame() {
        SavingBands bands = SavingBands.of(-320_000, 130_000);
        assertEquals(50_000, bands.step(), 0);
        assertEquals(List.of(-300_000.0, -250_000.0, -200_000.0, -150_000.0, -100_000.0, -50_000.0, 50_000.0, 100_000.0), bands.between());
        ChartTheme theme = ChartTheme.light();
        assertEquals(bands.colour(60_000, theme), bands.colour(90_000, theme));
        assertNotEquals(bands.colour(-1, theme), bands.colour(1, theme));
        assertTrue(bands.colour(-310_000, theme).getGreen() < bands.colour(-60_000, theme).getGreen(), "paler near costing the same");
        assertEquals(List.of(), SavingBands.of(7, 7).between());
    }

    @Test
    void oneInputOfARangeMakesNoGridAndThatIsSaid() {
        VariedInputs one = new VariedInputs() {
            @Override
            public List<String> names() {
                return INPUTS.names();
            }

            @Override
            public List<String> groups() {
                return List.of();
            }

            @Override
            public String words(int input, double value) {
                return INPUTS.words(input, value);
            }

            @Override
            public double shown(int input, double value) {
                return INPUTS.shown(input, value);
            }

            @Override
            public String unit(int input) {
                return INPUTS.unit(input);
            }

            @Override
            public long seed() {
                return INPUTS.seed();
            }

            @Override
            public boolean varies(int input) {
                return input == 1;
            }
        };
        WhatIfResults results = new WhatIfResults(BASE, one, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of(),
                List.of(), Optional.empty(), Optional.empty(), BreakEvens.NONE);
        assertTrue(WhatIfChart.GRID.of(results, PLAN, UnitSystem.METRIC, ChartTheme.light()).textAlternative()
                .contains("Only one uncertain input, “B”, takes any value of a range"));
    }

    @Test
    void sharesAreThoseOfTheSlopes() {
        Chart chart = WhatIfChart.SHARES.of(results(), PLAN, UnitSystem.METRIC, ChartTheme.light());
        assertEquals("A", chart.data().rows().get(0).get(0));
        assertEquals(100 * 1e4 / (1e4 + 900), (double) chart.data().rows().get(0).get(4), 25);
    }

    @Test
    void whatDecidesIsSaidWithItsInterval() {
        String words = WhatIfChart.SHARES.of(results(), PLAN, UnitSystem.METRIC, ChartTheme.light()).textAlternative();
        assertTrue(words.matches("A( and B)? explains? \\d+ % of the variance of the saving of “.*”: A about \\d+ % by itself \\(likely \\d+ % to \\d+ %\\).*"),
                words);
    }

    /** Draws from 0 to 2,000 every year: the 95th percentile is one that a draw in twenty exceeds. */
    @Test
    void theBudgetAtRiskIsAPercentile() {
        String words = WhatIfChart.BUDGET.of(results(), PLAN, UnitSystem.METRIC, ChartTheme.light()).textAlternative();
        assertTrue(words.contains(": one draw in twenty is "), words);
        assertFalse(words.contains("worst"), words);
    }

    @Test
    void drawsAreToldWithTheirSeed() {
        for (WhatIfChart kind : List.of(WhatIfChart.DISTRIBUTION, WhatIfChart.CONVERGENCE)) {
            String words = kind.of(results(), PLAN, UnitSystem.METRIC, ChartTheme.light()).textAlternative();
            assertTrue(words.contains(DRAWS + " draws, seed " + SEED), words);
        }
    }

    @Test
    void figuresOffASurfaceSaySo() {
        int years = BASE.input().years();
        FitErrors missed = new FitErrors(93, byPlan(7), byPlan(5), byYear(years, 3), byYear(years, 4), byYear(years, 6));
        for (WhatIfChart kind : List.of(WhatIfChart.DISTRIBUTION, WhatIfChart.SHARES, WhatIfChart.CONVERGENCE, WhatIfChart.BUDGET,
                WhatIfChart.SPENT, WhatIfChart.SPENT_MORE)) {
            String words = kind.of(results(missed), PLAN, UnitSystem.METRIC, ChartTheme.light()).textAlternative();
            assertTrue(words.contains("fitted surface: 95 draws of a hundred miss by USD " + within(kind) + ".00 at most, the largest seen by USD 8.00."),
                    words);
        }
        assertFalse(WhatIfChart.BREAK_EVEN.of(results(missed), PLAN, UnitSystem.METRIC, ChartTheme.light()).textAlternative().contains("surface"));
        assertFalse(WhatIfChart.GRID.of(results(missed), PLAN, UnitSystem.METRIC, ChartTheme.light()).textAlternative().contains("surface"));
    }

    /** Draws of A from 0 to 2: eight in ten of the last year lie a tenth and nine tenths of the way up. */
    @Test
    void eachPriceThatVariesHasAFan() {
        Chart chart = WhatIfChart.PRICES.of(results(), PLAN, UnitSystem.METRIC, ChartTheme.light());
        int years = BASE.input().years();
        assertTrue(
                chart.textAlternative()
                        .contains("In " + (BASE.input().baseYear() + years - 1) + " eight draws out of ten lie between these: price of fuel, diesel "),
                chart.textAlternative());
        List<Object> last = chart.data().rows().get(years - 1);
        assertEquals(1 + 0.2 * (years - 1), (double) last.get(3), 0.1 * years);
        assertEquals(1 + 1.8 * (years - 1), (double) last.get(5), 0.1 * years);
        List<Object> gallons = WhatIfChart.PRICES.of(results(), PLAN, UnitSystem.US, ChartTheme.light()).data().rows().get(years - 1);
        assertEquals("USD/L", last.get(1));
        assertEquals("USD/gal", gallons.get(1));
        assertEquals(3.785411784 * (double) last.get(4), (double) gallons.get(4), 1e-9);
        assertTrue(WhatIfChart.PRICES.of(nothing(), PLAN, UnitSystem.METRIC, ChartTheme.light()).textAlternative().contains("Not worked out yet"));
    }

    private static int within(WhatIfChart kind) {
        return switch (kind) {
            case BUDGET -> 3;
            case SPENT -> 4;
            case SPENT_MORE -> 6;
            default -> 5;
        };
    }

    private static List<Miss> byPlan(double within) {
        return Collections.nCopies(BASE.plans().size(), new Miss(within, 8, 0, 0));
    }

    private static List<List<Miss>> byYear(int years, double within) {
        return Collections.nCopies(BASE.plans().size(), Collections.nCopies(years, new Miss(within, 8, 0, 0)));
    }

    @Test
    void theBreakEvenIsSaidAndDrawn() {
        Chart chart = WhatIfChart.BREAK_EVEN.of(results(), PLAN, UnitSystem.METRIC, ChartTheme.light());
        assertTrue(chart.textAlternative().contains("above A 0.5"), chart.textAlternative());
    }

    /** A is even from 0 to 2, and what is appropriated in each year 1,000 times A, for every plan. */
    @Test
    void whatIsSpentAddsUpOverTheYears() {
        Chart chart = WhatIfChart.SPENT.of(results(), PLAN, UnitSystem.METRIC, ChartTheme.light());
        List<Object> first = chart.data().rows().get(0);
        List<Object> last = chart.data().rows().get(BASE.input().years() - 1);
        assertEquals(1000, (double) first.get(3), 150);
        for (int column = 1; column < 6; column++) {
            assertEquals(BASE.input().years() * (double) first.get(column), (double) last.get(column), 1e-6);
        }
        Chart apart = WhatIfChart.SPENT_MORE.of(results(), PLAN, UnitSystem.METRIC, ChartTheme.light());
        assertEquals(List.of(0.0, 0.0, 0.0), apart.data().rows().get(2).subList(1, 4), "all plans are appropriated the same");
        assertTrue(apart.textAlternative().contains("no less than"), apart.textAlternative());
    }

    /** The plan costs 20 more than the baseline less 100 A plus 30 B: it is the best when it saves, and regrets when not. */
    @Test
    void regretIsWhatIsMissedByAPlan() {
        Chart chart = WhatIfChart.REGRET.of(results(), PLAN, UnitSystem.METRIC, ChartTheme.light());
        int baseline = BASE.input().baseline();
        List<Object> plan = chart.data().rows().get(PLAN);
        List<Object> base = chart.data().rows().get(baseline);
        assertEquals(100, (double) plan.get(1) + (double) base.get(1), 1e-9, "in each draw one of the two costs less");
        assertTrue((double) plan.get(1) > 60, chart.data().rows().toString());
        assertTrue((double) base.get(2) > (double) plan.get(2), chart.data().rows().toString());
    }

    @Test
    void drawsAreCounted() {
        Chart chart = WhatIfChart.DISTRIBUTION.of(results(), PLAN, UnitSystem.METRIC, ChartTheme.light());
        assertEquals(DRAWS, chart.data().rows().stream().mapToInt(row -> (int) row.get(2)).sum());
    }
}
