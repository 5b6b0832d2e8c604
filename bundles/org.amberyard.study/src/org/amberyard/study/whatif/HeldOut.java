package org.amberyard.study.whatif;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.amberyard.core.variants.FitCheck;
import org.amberyard.core.variants.FitErrors;
import org.amberyard.core.whatif.Miss;
import org.amberyard.core.whatif.QuadraticSurface;
import org.amberyard.core.whatif.SortedDraws;

/**
 * Evaluations that surfaces were not fitted to, and by how much these miss them.
 *
 * @param results by column and evaluation
 * @param missed likewise: the result less what stands in for it
 */
record HeldOut(double[][] results, double[][] missed) {
    private static final double LOW_SHARE = 0.1;
    private static final double HIGH_SHARE = 0.9;

    /**
     * Of evaluations.
     *
     * @param left by column and evaluation: what the surface was to give
     */
    static HeldOut of(QuadraticSurface surface, double[][] inputs, double[][] results, double[][] left) {
        double[][] missed = new double[results.length][inputs.length];
        double[] read = new double[results.length];
        for (int evaluation = 0; evaluation < inputs.length; evaluation++) {
            surface.at(inputs[evaluation], read);
            for (int column = 0; column < results.length; column++) {
                missed[column][evaluation] = left[column][evaluation] - read[column];
            }
        }
        return new HeldOut(results, missed);
    }

    /** By how much results are missed, and whether that is good enough. */
    FitCheck check(OutcomeColumns of, int baseline, int fittedTo, double allowed) {
        FitErrors errors = errors(of, baseline);
        double worst = 0;
        for (int plan = 0; plan < of.plans(); plan++) {
            worst = Math.max(worst, proportion(errors.presentCosts().get(plan), results[of.presentCost(plan)]));
            worst = Math.max(worst, proportion(errors.savings().get(plan), saving(results, of, baseline, plan)));
        }
        return new FitCheck(errors, fittedTo, worst, allowed);
    }

    /** Of what is missed to the range in which eight draws of ten lie. */
    private static double proportion(Miss miss, double[] values) {
        SortedDraws draws = SortedDraws.of(values);
        double range = draws.quantile(HIGH_SHARE) - draws.quantile(LOW_SHARE);
        return miss.within() == 0 ? 0 : miss.within() / range;
    }

    private FitErrors errors(OutcomeColumns of, int baseline) {
        return new FitErrors(missed[0].length, byPlan(of, p -> Miss.of(missed[of.presentCost(p)])),
                byPlan(of, p -> Miss.of(saving(missed, of, baseline, p))),
                byPlan(of, p -> byYear(of, y -> Miss.of(missed[of.appropriation(p, y)]))),
                byPlan(of, p -> byYear(of, y -> Miss.of(spent(of, p, y)))),
                byPlan(of, p -> byYear(of, y -> Miss.of(less(spent(of, p, y), spent(of, baseline, y))))));
    }

    private static <T> List<T> byPlan(OutcomeColumns of, IntFunction<T> value) {
        return IntStream.range(0, of.plans()).mapToObj(value).toList();
    }

    private static <T> List<T> byYear(OutcomeColumns of, IntFunction<T> value) {
        return IntStream.range(0, of.years()).mapToObj(value).toList();
    }

    private static double[] saving(double[][] values, OutcomeColumns of, int baseline, int plan) {
        return less(values[of.presentCost(baseline)], values[of.presentCost(plan)]);
    }

    private double[] spent(OutcomeColumns of, int plan, int lastYear) {
        double[] sum = new double[missed[0].length];
        for (int year = 0; year <= lastYear; year++) {
            double[] appropriation = missed[of.appropriation(plan, year)];
            Arrays.setAll(sum, e -> sum[e] + appropriation[e]);
        }
        return sum;
    }

    private static double[] less(double[] values, double[] others) {
        return IntStream.range(0, values.length).mapToDouble(e -> values[e] - others[e]).toArray();
    }
}
