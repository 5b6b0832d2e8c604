package org.amberyard.core.optimum;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.PointValuePair;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;

/**
 * The linear programme in the prices of the resources and the cost of each group at them, with the options that are known. Its
 * answer need not be exact: a bound is worked out anew at its prices.
 */
final class PriceProgram {
    private static final int MOST_PIVOTS = 100_000;

    private final ChoiceProblem problem;
    private final List<Set<Integer>> known;
    private final int[] scarce;
    private final double money;
    private final double[] scale;

    /** @param cost value of the programme; no bound lies above it as long as the options known are those that matter */
    record Solved(double[] prices, double cost) {
    }

    PriceProgram(ChoiceProblem problem) {
        this.problem = problem;
        this.known = problem.groups().stream().map(g -> (Set<Integer>) new LinkedHashSet<Integer>()).toList();
        this.scarce = IntStream.range(0, problem.resources()).filter(r -> !Double.isInfinite(problem.limit(r))).toArray();
        this.money = Math.max(1e-9, problem.groups().stream().flatMap(List::stream).mapToDouble(c -> Math.abs(c.cost())).max().orElse(1));
        this.scale = IntStream.range(0, problem.resources()).mapToDouble(r -> Math.max(1e-9, problem.groups().stream()
                .flatMap(List::stream).mapToDouble(c -> Math.abs(c.use(r))).max().orElse(1))).toArray();
    }

    /** Takes note of options; false when it knew them all. */
    boolean learn(int[] picks) {
        boolean more = false;
        for (int g = 0; g < picks.length; g++) {
            more |= known.get(g).add(picks[g]);
        }
        return more;
    }

    /** The prices at which the known options cost most together; empty where rounding keeps the solver from an answer. */
    Optional<Solved> solve() {
        try {
            return Optional.of(solved());
        } catch (MathIllegalStateException e) {
            // Unbounded, without a feasible point or without an end: none of them is so but by rounding.
            return Optional.empty();
        }
    }

    private Solved solved() {
        int groups = problem.groups().size();
        double[] objective = new double[groups + scarce.length];
        Arrays.fill(objective, 0, groups, 1);
        for (int s = 0; s < scarce.length; s++) {
            objective[groups + s] = -problem.limit(scarce[s]) / scale[scarce[s]];
        }
        PointValuePair found = new SimplexSolver().optimize(new MaxIter(MOST_PIVOTS),
                new LinearObjectiveFunction(objective, 0), new LinearConstraintSet(constraints()), GoalType.MAXIMIZE,
                new NonNegativeConstraint(false));
        double[] prices = new double[problem.resources()];
        for (int s = 0; s < scarce.length; s++) {
            prices[scarce[s]] = Math.max(0, found.getPoint()[groups + s]) * money / scale[scarce[s]];
        }
        return new Solved(prices, found.getValue() * money);
    }

    private List<LinearConstraint> constraints() {
        List<LinearConstraint> constraints = new ArrayList<>();
        for (int g = 0; g < known.size(); g++) {
            for (int option : known.get(g)) {
                constraints.add(atMost(g, problem.groups().get(g).get(option)));
            }
        }
        double most = 10.0 * known.size();
        for (int s = 0; s < scarce.length; s++) {
            double[] price = new double[known.size() + scarce.length];
            price[known.size() + s] = 1;
            constraints.add(new LinearConstraint(price, Relationship.GEQ, 0));
            constraints.add(new LinearConstraint(price, Relationship.LEQ, most));
        }
        return constraints;
    }

    /** A group costs no more than an option of it with what it takes at the prices. */
    private LinearConstraint atMost(int group, Choice option) {
        double[] row = new double[known.size() + scarce.length];
        row[group] = 1;
        for (int s = 0; s < scarce.length; s++) {
            row[known.size() + s] = -option.use(scarce[s]) / scale[scarce[s]];
        }
        return new LinearConstraint(row, Relationship.LEQ, option.cost() / money);
    }
}
