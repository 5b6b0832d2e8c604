package org.amberyard.core.optimum;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.apache.commons.math3.random.MersenneTwister;
import org.apache.commons.math3.random.RandomGenerator;
import org.amberyard.core.progress.Progress;
import org.junit.jupiter.api.Test;

/** Choices so small that each step can be followed by hand, and small random ones against all their choices one by one. */
class ChoiceByHandTest {
    private static final double NONE = Double.POSITIVE_INFINITY;

    /** Of the first group 3 of 2 and 1 units, or 5 of none; of the second 4 that gives 2 of the first resource, or 1 of one unit. */
    private final ChoiceProblem two = problem(new double[] {1, NONE},
            List.of(choice(3, 2, 1), choice(5, 0, 0)), List.of(choice(4, -2, 0), choice(1, 1, 0)));

    private static Choice choice(double cost, double... use) {
        return new Choice(cost, use);
    }

    @SafeVarargs
    private static ChoiceProblem problem(double[] limits, List<Choice>... groups) {
        return new ChoiceProblem(List.of(groups), limits);
    }

    @Test
    void anOptionCostsWhatItTakesAtPrices() {
        assertEquals(3 + 2 * 10 + 1 * 100, choice(3, 2, 1).costAt(new double[] {10, 100}), 0);
        double[] sums = {1, 1};
        choice(3, 2, -1).addTo(sums, -3);
        assertArrayEquals(new double[] {-5, 4}, sums, 0);
        assertEquals(-1, choice(3, 2, -1).use(1), 0);
    }

    /** At a price of 1 the first option costs 5 as the second does, and the first of equals is taken; above it the second. */
    @Test
    void theFirstOfEqualsIsTheCheapest() {
        assertArrayEquals(new int[] {0, 1}, two.cheapest(new double[] {0, 0}));
        assertEquals(0, two.cheapest(0, new double[] {1, 0}));
        assertEquals(1, two.cheapest(0, new double[] {1, 0.01}));
        assertArrayEquals(new int[] {1, 0}, two.cheapest(new double[] {1.01, 0}));
    }

    @Test
    void whatPicksTakeAndCost() {
        assertArrayEquals(new double[] {3, 1}, two.taken(new int[] {0, 1}), 0);
        assertArrayEquals(new double[] {0, 1}, two.taken(new int[] {0, 0}), 0);
        assertEquals(7, two.cost(new int[] {0, 0}), 0);
        assertEquals(6, two.cost(new int[] {1, 1}), 0);
    }

    /** A limit that there is not is worth nothing as long as nothing has a price. */
    @Test
    void limitsAreWorthTheirPrice() {
        assertEquals(7, two.limitsAt(new double[] {7, 0}), 0);
        assertEquals(0, two.limitsAt(new double[] {0, 0}), 0);
        assertEquals(2 * 3 - 4 * 5, problem(new double[] {2, -4}, List.of(choice(1, 0, 0))).limitsAt(new double[] {3, 5}), 0);
    }

    /** Nobody changes a problem from outside. */
    @Test
    void arraysAreTheProblemsOwn() {
        double[] limits = {1};
        double[] use = {1};
        Choice one = new Choice(2, use);
        ChoiceProblem problem = problem(limits, List.of(one));
        limits[0] = 9;
        use[0] = 9;
        one.use()[0] = 9;
        problem.limits()[0] = 9;
        assertEquals(1, problem.limit(0), 0);
        assertEquals(1, one.use(0), 0);
        ChoiceBound bound = ChoiceBound.of(problem, Progress.NONE);
        ChoiceSearch.Found found = ChoiceSearch.of(problem, bound, List.of(), Progress.NONE);
        bound.prices()[0] = 9;
        found.picks()[0] = 9;
        assertEquals(0, bound.prices()[0], 0);
        assertEquals(0, found.picks()[0]);
    }

    /**
     * At a price p of the first resource the groups cost min(3 + 2p, 5) and min(4 − 2p, 1 + p), less p: 4 + 2p up to p = 1, where it is
     * 6, and 9 − 3p beyond. The least choice that keeps the limit is the dearer first and the second second, 6.
     */
    @Test
    void theBoundByHand() {
        ChoiceBound bound = ChoiceBound.of(two, Progress.NONE);
        assertEquals(6, bound.cost(), 1e-9);
        assertEquals(1, bound.prices()[0], 1e-9);
        assertEquals(0, bound.prices()[1], 0);
        assertArrayEquals(new int[] {0, 1}, bound.picks().get(0), "what is cheapest without prices");
        ChoiceSearch.Found found = ChoiceSearch.of(two, bound, List.of(), Progress.NONE);
        assertArrayEquals(new int[] {1, 1}, found.picks());
        assertEquals(6, found.cost(), 0);
        assertTrue(found.within() && found.proven());
    }

    /** Those on the way to the bound are kept, from what is cheapest without prices to what is at its own. */
    @Test
    void picksOnTheWayAreKept() {
        RandomGenerator random = new MersenneTwister(3);
        List<List<Choice>> groups = IntStream.range(0, 30).mapToObj(g -> IntStream.range(0, 8).mapToObj(o -> {
            double[] use = IntStream.range(0, 20).mapToDouble(r -> random.nextDouble()).toArray();
            return new Choice(30 - 5 * Arrays.stream(use).sum() + 20 * random.nextDouble(), use);
        }).toList()).toList();
        ChoiceProblem problem = new ChoiceProblem(groups, IntStream.range(0, 20).mapToDouble(r -> 10 + r / 4.0).toArray());
        List<Double> shares = new ArrayList<>();
        ChoiceBound bound = ChoiceBound.of(problem, shares::add);
        assertTrue(shares.size() > 3, shares.toString());
        assertEquals(shares.size() + 1, bound.picks().size());
        assertArrayEquals(problem.cheapest(new double[20]), bound.picks().get(0));
        double[] prices = bound.prices();
        double cheapest = groups.stream().mapToDouble(g -> g.stream().mapToDouble(c -> c.costAt(prices)).min().orElseThrow()).sum();
        assertEquals(cheapest - problem.limitsAt(prices), bound.cost(), 1e-9);
        assertEquals(shares.stream().sorted().toList(), shares);
        assertTrue(shares.get(shares.size() - 1) < 1 && shares.get(0) == 0 && shares.get(1) > 0, shares.toString());
    }

    private static ChoiceBound free(ChoiceProblem problem) {
        int resources = problem.limits().length;
        return new ChoiceBound(0, new double[resources], List.of(problem.cheapest(new double[resources])));
    }

    /** Going through all branches finds the least, from no picks that are known and without prices too. */
    @Test
    void theTreeFindsTheLeastFromNothing() {
        for (ChoiceBound bound : List.of(free(two), ChoiceBound.of(two, Progress.NONE))) {
            ChoiceTree tree = new ChoiceTree(two, bound, new int[] {0, 1}, NONE);
            assertArrayEquals(new int[] {1, 1}, tree.best());
            assertTrue(tree.complete());
        }
    }

    /** Picks that are known give way to cheaper ones alone. */
    @Test
    void whatIsKnownStaysWhereNothingIsCheaper() {
        int[] known = {0, 0};
        assertArrayEquals(new int[] {1, 1}, new ChoiceTree(two, free(two), known, two.cost(known)).best());
        assertArrayEquals(known, new ChoiceTree(two, free(two), known, 6).best(), "as cheap as the least");
        assertArrayEquals(known, new ChoiceTree(two, free(two), known, 5.9).best());
    }

    /** A limit is kept to a thousand-millionth of it, as rounding asks for, and no further. */
    @Test
    void rounding() {
        for (double over : new double[] {1e-7, -1e-7, 1e-4, 0}) {
            ChoiceProblem near = problem(new double[] {1000}, List.of(choice(1, 1000 + over), choice(2, 0)));
            ChoiceSearch.Found found = ChoiceSearch.of(near, free(near), List.of(), Progress.NONE);
            assertEquals(over <= 1e-7 ? 1 : 2, found.cost(), 0, "over by " + over);
            assertTrue(found.within());
        }
    }

    /**
     * Two units too many. Mended for 3 money a unit by the first group, for 2 by the second and 1 by the third, which mends one unit: so the
     * third goes first and the second then.
     */
    @Test
    void whatIsTooMuchIsMendedWhereThatCostsLeast() {
        ChoiceProblem problem = problem(new double[] {1}, List.of(choice(0, 1), choice(3, 0)), List.of(choice(0, 1), choice(2, 0)),
                List.of(choice(0, 1), choice(1, 0)));
        ChoiceSearch.Found found = ChoiceSearch.of(problem, free(problem), List.of(), Progress.NONE);
        assertArrayEquals(new int[] {0, 1, 1}, found.picks());
        assertEquals(3, found.cost(), 0);
    }

    /** Where no single change brings it back within, the choice that is least beyond is given, and said to be so; the cheaper of two. */
    @Test
    void beyondAllLimitsTheNearestIsGiven() {
        ChoiceProblem problem = problem(new double[] {10, 1}, List.of(choice(1, 14, 0), choice(5, 12, 0), choice(4, 12, 0), choice(0, 0, 2)));
        ChoiceSearch.Found found = ChoiceSearch.of(problem, free(problem), List.of(), Progress.NONE);
        assertArrayEquals(new int[] {2}, found.picks(), "a fifth beyond the first limit, where the last is one whole beyond the second");
        assertFalse(found.within());
        assertFalse(found.proven());
    }

    /** Invented: up to four groups of up to four options, whole numbers below and above zero, limits with none among them. */
    private static ChoiceProblem small(long seed) {
        RandomGenerator random = new MersenneTwister(seed);
        int resources = 1 + random.nextInt(3);
        List<List<Choice>> groups = IntStream.range(0, 1 + random.nextInt(4)).mapToObj(g -> IntStream.range(0, 1 + random.nextInt(4))
                .mapToObj(o -> new Choice(random.nextInt(30) - 10, IntStream.range(0, resources).mapToDouble(r -> random.nextInt(9) - 3).toArray()))
                .toList()).toList();
        return new ChoiceProblem(groups, IntStream.range(0, resources).mapToDouble(r -> random.nextInt(4) == 0 ? NONE : random.nextInt(9) - 2)
                .toArray());
    }

    private static List<int[]> all(ChoiceProblem problem) {
        List<int[]> all = List.of(new int[0]);
        for (List<Choice> group : problem.groups()) {
            all = all.stream().flatMap(picks -> IntStream.range(0, group.size()).mapToObj(o -> {
                int[] more = Arrays.copyOf(picks, picks.length + 1);
                more[picks.length] = o;
                return more;
            })).toList();
        }
        return all;
    }

    @Property(tries = 600)
    void smallProblemsAreSolved(@ForAll @LongRange(min = 1, max = 1_000_000_000) long seed) {
        ChoiceProblem problem = small(seed);
        List<Double> within = all(problem).stream().filter(picks -> IntStream.range(0, problem.resources())
                .allMatch(r -> problem.taken(picks)[r] <= problem.limit(r))).map(problem::cost).toList();
        ChoiceBound bound = ChoiceBound.of(problem, Progress.NONE);
        ChoiceSearch.Found found = ChoiceSearch.of(problem, bound, List.of(), Progress.NONE);
        assertEquals(!within.isEmpty(), found.within());
        assertEquals(found.within(), found.proven());
        assertEquals(problem.cost(found.picks()), found.cost(), 0);
        if (found.within()) {
            assertEquals(Collections.min(within), found.cost(), 0);
            assertTrue(bound.cost() <= found.cost() + 1e-6, bound.cost() + " above " + found.cost());
            assertEquals(found.cost(), problem.cost(new ChoiceTree(problem, free(problem), found.picks(), NONE).best()), 0);
        }
    }
}
