package org.amberyard.core.optimum;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Goes through choices group by group and leaves out every branch that cannot beat the best one known: at the prices of a bound, what
 * a branch costs at least is the sum of what its groups cost with what they take. Stops after a number of branches, so that its answer
 * is always the same; before that it is exact.
 */
final class ChoiceTree {
    private static final int MOST_BRANCHES = 400_000;
    private static final double WITHIN = 1e-9;

    private final ChoiceProblem problem;
    private final double[] prices;
    private final int[] order;
    private final int[][] options;
    private final double[] restAtLeast;
    private final double base;
    private int[] best;
    private double bestCost;
    private int branches;

    /** @param known picks that keep the limits, or their cost infinite where none are known */
    ChoiceTree(ChoiceProblem problem, ChoiceBound bound, int[] known, double knownCost) {
        this.problem = problem;
        this.prices = bound.prices();
        this.best = known.clone();
        this.bestCost = knownCost;
        int groups = problem.groups().size();
        this.order = IntStream.range(0, groups).boxed()
                .sorted(Comparator.comparingDouble(this::regret).reversed()).mapToInt(Integer::intValue).toArray();
        this.options = IntStream.of(order).mapToObj(this::sorted).toArray(int[][]::new);
        this.restAtLeast = new double[groups + 1];
        for (int depth = groups - 1; depth >= 0; depth--) {
            restAtLeast[depth] = restAtLeast[depth + 1] + choice(depth, options[depth][0]).costAt(prices);
        }
        this.base = -problem.limitsAt(prices);
    }

    /** What the second cheapest option of a group costs more than the cheapest: groups that decide most come first. */
    private double regret(int group) {
        double[] costs = problem.groups().get(group).stream().mapToDouble(c -> c.costAt(prices)).sorted().toArray();
        return costs.length > 1 ? costs[1] - costs[0] : Double.POSITIVE_INFINITY;
    }

    private int[] sorted(int group) {
        List<Choice> all = problem.groups().get(group);
        return IntStream.range(0, all.size()).boxed().sorted(Comparator.comparingDouble(o -> all.get(o).costAt(prices)))
                .mapToInt(Integer::intValue).toArray();
    }

    private Choice choice(int depth, int option) {
        return problem.groups().get(order[depth]).get(option);
    }

    /** The best picks found; those known where none is better. */
    int[] best() {
        branch(0, new int[order.length], base, 0, new double[prices.length]);
        return best.clone();
    }

    /** True when {@link #best} has left out no branch that could have been better. */
    boolean complete() {
        return branches <= MOST_BRANCHES;
    }

    private void branch(int depth, int[] picks, double atPrices, double cost, double[] taken) {
        if (depth == order.length) {
            if (cost < bestCost && within(taken)) {
                best = picks.clone();
                bestCost = cost;
            }
            return;
        }
        for (int option : options[depth]) {
            Choice choice = choice(depth, option);
            double with = atPrices + choice.costAt(prices);
            if (with + restAtLeast[depth + 1] >= bestCost - WITHIN * Math.abs(bestCost) || ++branches > MOST_BRANCHES) {
                return;
            }
            picks[order[depth]] = option;
            choice.addTo(taken, 1);
            branch(depth + 1, picks, with, cost + choice.cost(), taken);
            choice.addTo(taken, -1);
        }
    }

    private boolean within(double[] taken) {
        return IntStream.range(0, taken.length)
                .allMatch(r -> taken[r] <= problem.limit(r) + WITHIN * Math.max(1, Math.abs(problem.limit(r))));
    }
}
