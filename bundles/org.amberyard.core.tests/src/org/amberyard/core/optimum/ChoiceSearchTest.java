package org.amberyard.core.optimum;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.apache.commons.math3.random.MersenneTwister;
import org.apache.commons.math3.random.RandomGenerator;
import org.amberyard.core.progress.Progress;
import org.junit.jupiter.api.Test;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Variable;

/** Held against the same problem as a linear programme, solved by the library ojAlgo, and against all its choices one by one. */
class ChoiceSearchTest {

    private static Choice choice(double cost, double... use) {
        return new Choice(cost, use);
    }

    /** Invented: six groups of five options, two resources and a number to be reached. */
    private static ChoiceProblem random(long seed) {
        RandomGenerator random = new MersenneTwister(seed);
        List<List<Choice>> groups = IntStream.range(0, 6).mapToObj(g -> {
            List<Choice> options = new ArrayList<>(List.of(choice(100, 0, 0, 0)));
            IntStream.range(0, 4).forEach(o -> options.add(choice(20 + 100 * random.nextDouble(), 10 * random.nextDouble(),
                    5 * random.nextDouble(), o % 2 == 0 ? -1 : 0)));
            return options;
        }).toList();
        return new ChoiceProblem(groups, new double[] {5 + 20 * random.nextDouble(), 3 + 8 * random.nextDouble(), -1});
    }

    /** Buses of a kind have the same options, so that what they take together differs by rounding alone; invented. */
    @Test
    void limitsThatNothingKeepsEndTheSearchToo() {
        for (long seed = 1; seed <= 20; seed++) {
            RandomGenerator random = new MersenneTwister(seed);
            List<Choice> options = IntStream.range(0, 6).mapToObj(o -> choice(100 * random.nextDouble(),
                    IntStream.range(0, 12).mapToDouble(r -> 1e5 * (1 + random.nextDouble())).toArray())).toList();
            ChoiceProblem alike = new ChoiceProblem(Collections.nCopies(10, options),
                    IntStream.range(0, 12).mapToDouble(r -> 1e5 * random.nextDouble()).toArray());
            ChoiceSearch.Found found = assertTimeoutPreemptively(Duration.ofMinutes(1),
                    () -> ChoiceSearch.of(alike, ChoiceBound.of(alike, Progress.NONE), List.of(), Progress.NONE));
            assertFalse(found.within());
            assertFalse(found.proven());
        }
    }

    /** With fractions of options allowed. */
    private static double relaxed(ChoiceProblem problem) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        List<Expression> limits = IntStream.range(0, problem.resources())
                .mapToObj(r -> model.addExpression("limit " + r).upper(problem.limit(r))).toList();
        for (List<Choice> group : problem.groups()) {
            Expression one = model.addExpression().level(1);
            for (Choice option : group) {
                Variable taken = model.addVariable().lower(0).upper(1).weight(option.cost());
                one.set(taken, 1);
                IntStream.range(0, limits.size()).forEach(r -> limits.get(r).set(taken, option.use(r)));
            }
        }
        return model.minimise().getValue();
    }

    private static double least(ChoiceProblem problem) {
        int[] picks = new int[problem.groups().size()];
        double least = Double.POSITIVE_INFINITY;
        do {
            double[] taken = problem.taken(picks);
            if (IntStream.range(0, taken.length).allMatch(r -> taken[r] <= problem.limit(r))) {
                least = Math.min(least, problem.cost(picks));
            }
        } while (next(problem, picks));
        return least;
    }

    private static boolean next(ChoiceProblem problem, int[] picks) {
        for (int g = 0; g < picks.length; g++) {
            if (++picks[g] < problem.groups().get(g).size()) {
                return true;
            }
            picks[g] = 0;
        }
        return false;
    }

    @Property(tries = 60)
    void theBoundIsThatOfTheLinearProgrammeAndTheSearchFindsTheLeastOfAFew(@ForAll @LongRange(min = 1, max = 1_000_000) long seed) {
        ChoiceProblem problem = random(seed);
        ChoiceBound bound = ChoiceBound.of(problem, Progress.NONE);
        double relaxed = relaxed(problem);
        assertTrue(bound.cost() <= relaxed + 1e-6 * Math.abs(relaxed), bound.cost() + " above " + relaxed);
        assertEquals(relaxed, bound.cost(), 1e-6 * Math.abs(relaxed));
        ChoiceSearch.Found found = ChoiceSearch.of(problem, bound, List.of(), Progress.NONE);
        double least = least(problem);
        assertTrue(found.within());
        assertTrue(found.proven(), "there are few enough branches to go through all");
        assertEquals(least, found.cost(), 1e-6 * least);
        assertEquals(found.cost(), problem.cost(found.picks()), 1e-9);
    }

    /**
     * Invented: fifty groups of eight options, of which not all choices can be tried. The bound breaks up as many groups
     * at most as there are resources, so the least of all lies little above it.
     */
    private static ChoiceProblem large(long seed) {
        RandomGenerator random = new MersenneTwister(seed);
        List<List<Choice>> groups = IntStream.range(0, 50).mapToObj(g -> IntStream.range(0, 8).mapToObj(o -> {
            double first = 10 * random.nextDouble();
            double second = 10 * random.nextDouble();
            return choice(200 - 8 * first - 6 * second + 20 * random.nextDouble(), first, second);
        }).toList()).toList();
        return new ChoiceProblem(groups, new double[] {200, 180});
    }

    @Property(tries = 6)
    void ofVeryManyChoicesTheCostIsLittleAboveTheBound(@ForAll @LongRange(min = 1, max = 1_000_000) long seed) {
        ChoiceProblem problem = large(seed);
        ChoiceBound bound = ChoiceBound.of(problem, Progress.NONE);
        ChoiceSearch.Found found = ChoiceSearch.of(problem, bound, List.of(), Progress.NONE);
        assertTrue(found.within());
        assertTrue(found.cost() >= bound.cost() && found.cost() <= 1.002 * bound.cost(), found.cost() + " beside " + bound.cost());
        assertTrue(IntStream.range(0, 2).allMatch(r -> problem.taken(found.picks())[r] <= problem.limit(r) + 1e-6));
    }

    /** From options that take far too much back within the limits; without prices too many branches are left to prove anything. */
    @Test
    void aStartBeyondTheLimitsIsMended() {
        ChoiceProblem problem = large(5);
        int[] most = IntStream.range(0, 50).map(g -> IntStream.range(0, 8).boxed()
                .max(Comparator.comparingDouble(o -> problem.groups().get(g).get(o).use(0))).orElseThrow()).toArray();
        assertTrue(problem.taken(most)[0] > 400, "twice the limit");
        ChoiceBound free = new ChoiceBound(0, new double[2], List.of(problem.cheapest(new double[2])));
        ChoiceSearch.Found found = ChoiceSearch.of(problem, free, List.of(most), Progress.NONE);
        assertTrue(found.within());
        assertFalse(found.proven());
        assertTrue(found.cost() <= 1.01 * ChoiceBound.of(problem, Progress.NONE).cost());
    }

    @Test
    void optionsAreAlikeByWhatTheyCostAndTake() {
        assertEquals(choice(3, 1, 2), choice(3, 1, 2));
        assertEquals(choice(3, 1, 2).hashCode(), choice(3, 1, 2).hashCode());
        assertNotEquals(choice(3, 1, 2), choice(3, 1, 1));
        assertNotEquals(choice(3, 1, 2), choice(2, 1, 2));
        assertEquals("3.0 taking [1.0, 2.0]", choice(3, 1, 2).toString());
    }

    /** What a group without a second option costs is known, so it decides nothing. */
    @Test
    void groupsOfOneOptionAreTakenAsTheyAre() {
        ChoiceProblem problem = new ChoiceProblem(List.of(List.of(choice(7, 1)), List.of(choice(10, 0), choice(4, 1)), List.of(choice(1, 0))),
                new double[] {1.5});
        ChoiceSearch.Found found = ChoiceSearch.of(problem, ChoiceBound.of(problem, Progress.NONE), List.of(), Progress.NONE);
        assertEquals(18, found.cost(), 0);
        assertTrue(found.proven());
    }

    @Test
    void whatIsFreeIsTakenWhereNothingIsScarce() {
        ChoiceProblem problem = new ChoiceProblem(List.of(List.of(choice(5, 1), choice(3, 9)), List.of(choice(2, 1))),
                new double[] {Double.POSITIVE_INFINITY});
        ChoiceBound bound = ChoiceBound.of(problem, Progress.NONE);
        assertEquals(5, bound.cost(), 1e-12);
        assertEquals(0, bound.prices()[0], 0);
        assertEquals(5, ChoiceSearch.of(problem, bound, List.of(), Progress.NONE).cost(), 1e-12);
    }

    @Test
    void thePriceOfWhatIsScarceIsWhatOneUnitMoreSaves() {
        // The cheap option takes 4 and saves 8: at a limit of 2 half of it fits, and one unit more saves 2.
        ChoiceProblem problem = new ChoiceProblem(List.of(List.of(choice(10, 0), choice(2, 4))), new double[] {2});
        ChoiceBound bound = ChoiceBound.of(problem, Progress.NONE);
        assertEquals(6, bound.cost(), 1e-9);
        assertEquals(2, bound.prices()[0], 1e-9);
        ChoiceSearch.Found found = ChoiceSearch.of(problem, bound, List.of(), Progress.NONE);
        assertEquals(10, found.cost(), 0);
    }

    @Test
    void whereNoChoiceIsWithinItSaysSo() {
        ChoiceProblem problem = new ChoiceProblem(List.of(List.of(choice(1, 3), choice(2, 2))), new double[] {1});
        ChoiceSearch.Found found = ChoiceSearch.of(problem, ChoiceBound.of(problem, Progress.NONE), List.of(), Progress.NONE);
        assertFalse(found.within() || found.proven());
        assertEquals(2, found.cost(), 0);
    }

    @Test
    void twoChangesTogetherAreFoundWhereOneAloneBreaksALimit() {
        // Only together do a dear option that gives and a cheap one that takes pay.
        ChoiceProblem problem = new ChoiceProblem(List.of(List.of(choice(0, 0), choice(1, -2)), List.of(choice(10, 0), choice(1, 2))),
                new double[] {0});
        ChoiceSearch.Found found = ChoiceSearch.of(problem, ChoiceBound.of(problem, Progress.NONE), List.of(new int[] {0, 0}), Progress.NONE);
        assertEquals(2, found.cost(), 0);
    }

    @Property(tries = 10)
    void theBoundAndTheSearchStopWhenNobodyWantsThem(@ForAll @LongRange(min = 1, max = 1_000_000) long seed) {
        ChoiceProblem problem = random(seed);
        ChoiceBound bound = ChoiceBound.of(problem, Progress.NONE);
        for (int calls = 0; calls < 3; calls++) {
            int after = calls;
            assertThrows(CancellationException.class, () -> ChoiceSearch.of(problem, bound, List.of(), cancelled(after)));
        }
        assertThrows(CancellationException.class, () -> ChoiceBound.of(problem, cancelled(0)));
    }

    private static Progress cancelled(int after) {
        AtomicInteger calls = new AtomicInteger();
        return share -> {
            if (calls.getAndIncrement() >= after) {
                throw new CancellationException();
            }
        };
    }

    @Test
    void wrongProblemsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new ChoiceProblem(List.of(List.of()), new double[0]));
        assertThrows(IllegalArgumentException.class, () -> new ChoiceProblem(List.of(List.of(choice(1, 1))), new double[0]));
    }
}
