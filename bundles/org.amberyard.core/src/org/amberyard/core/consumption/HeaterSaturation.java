package org.amberyard.core.consumption;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.distribution.FDistribution;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * Finds how far below mild the heater reaches its limit, when the logs show that it does: the saturation with the smallest
 * residual sum, found on a grid and refined by Brent's method.
 *
 * <p>It is believed only when at least three cold entries lie on either side of it and an F test finds the smaller residual
 * sum significant at 99 %. The level is strict because the test does not know that the best of many saturations was taken
 * (common practice for broken-line regression, no source).
 */
final class HeaterSaturation {
    private static final int ENTRIES_ON_EITHER_SIDE = 3;
    private static final int GRID_STEPS = 48;
    private static final double CONFIDENCE = 0.99;
    /** Share of the squared energies below which a residual sum is rounding error. */
    private static final double ROUNDING = 1e-16;
    private static final double RELATIVE_TOLERANCE = 1e-12;
    private static final double TOLERANCE_K = 1e-12;
    private static final int MOST_EVALUATIONS = 500;

    private final CurveDesign design;
    private final List<CurveTerm> terms;
    private final double[] target;

    HeaterSaturation(CurveDesign design, List<CurveTerm> terms) {
        this.design = design;
        this.terms = terms;
        this.target = design.target();
    }

    /** Degrees below mild at which the heater is at its limit, K; empty when the logs do not show one. */
    OptionalDouble findK() {
        double[] cold = design.entries().stream().mapToDouble(design::coldK).filter(k -> k > 0).sorted().toArray();
        if (cold.length < 2 * ENTRIES_ON_EITHER_SIDE) {
            return OptionalDouble.empty();
        }
        double lowK = cold[ENTRIES_ON_EITHER_SIDE - 1];
        double highK = cold[cold.length - ENTRIES_ON_EITHER_SIDE];
        if (lowK >= highK) {
            return OptionalDouble.empty();
        }
        double bestK = refine(lowK, highK, bestOfGrid(lowK, highK));
        return isSignificant(residualSum(bestK)) ? OptionalDouble.of(bestK) : OptionalDouble.empty();
    }

    private int bestOfGrid(double lowK, double highK) {
        int best = 0;
        double bestSum = Double.POSITIVE_INFINITY;
        for (int step = 0; step <= GRID_STEPS; step++) {
            double sum = residualSum(atStep(lowK, highK, step));
            if (sum < bestSum) {
                best = step;
                bestSum = sum;
            }
        }
        return best;
    }

    private double refine(double lowK, double highK, int step) {
        double fromK = atStep(lowK, highK, Math.max(0, step - 1));
        double toK = atStep(lowK, highK, Math.min(GRID_STEPS, step + 1));
        return new BrentOptimizer(RELATIVE_TOLERANCE, TOLERANCE_K).optimize(new MaxEval(MOST_EVALUATIONS),
                GoalType.MINIMIZE, new UnivariateObjectiveFunction(this::residualSum),
                new SearchInterval(fromK, toK, atStep(lowK, highK, step))).getPoint();
    }

    private static double atStep(double lowK, double highK, int step) {
        return lowK + (highK - lowK) * step / GRID_STEPS;
    }

    private boolean isSignificant(double limitedSum) {
        double freeSum = residualSum(CurveDesign.UNLIMITED_K);
        double squares = 0;
        for (double energy : target) {
            squares += energy * energy;
        }
        int freedom = target.length - terms.size() - 1;
        if (freedom < 1 || freeSum <= ROUNDING * squares) {
            return false;
        }
        double needed = new FDistribution(1, freedom).inverseCumulativeProbability(CONFIDENCE);
        return (freeSum - limitedSum) * freedom > needed * limitedSum;
    }

    private double residualSum(double saturationK) {
        return NonNegativeLeastSquares.solve(design.columns(terms, saturationK), target).residualSum();
    }
}
