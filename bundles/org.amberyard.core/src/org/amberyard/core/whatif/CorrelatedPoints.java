package org.amberyard.core.whatif;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.amberyard.core.math.Checks;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * A sample of a set size whose coordinates keep their values but are paired anew, so that their ranks are correlated as
 * asked: Iman and Conover, "A distribution-free approach to inducing rank correlation among input variables",
 * Communications in Statistics, Simulation and Computation 11 (1982), 311–334 (from memory). Scores of the ranks are
 * multiplied by a matrix that takes their own correlation out and puts the target in; coordinates are put in the order
 * of the result. Targets are turned into correlations of scores first ({@link RankCorrelation}), which brings ranks
 * nearer to what was asked.
 *
 * <p>Coordinates that are correlated with none are those of the sample itself; of the others n numbers each are kept.
 */
public final class CorrelatedPoints implements UnitPoints {
    private final UnitPoints sample;
    private final int draws;
    private final double[][] paired;

    private CorrelatedPoints(UnitPoints sample, int draws, double[][] paired) {
        this.sample = sample;
        this.draws = draws;
        this.paired = paired;
    }

    /**
     * A correlated sample.
     *
     * @param sample independent points
     * @param draws how many of them, more than there are inputs
     * @param names names of the inputs, for messages
     * @param correlations correlations of pairs; pairs that are not named are not correlated
     * @throws IllegalArgumentException when correlations cannot all hold, naming the pair that stands in the way
     */
    public static CorrelatedPoints of(UnitPoints sample, int draws, List<String> names,
            List<RankCorrelation> correlations) {
        Checks.atLeast("Number of draws of correlated inputs", draws, sample.dimensions() + 1);
        double[][] paired = new double[sample.dimensions()][];
        if (!correlations.isEmpty()) {
            CorrelationMatrix target = CorrelationMatrix.of(names, correlations);
            pair(sample, draws, target, paired);
        }
        return new CorrelatedPoints(sample, draws, paired);
    }

    private static void pair(UnitPoints sample, int draws, CorrelationMatrix target, double[][] paired) {
        int[] inputs = target.inputs();
        double[][] columns = new double[inputs.length][draws];
        double[][] scores = new double[inputs.length][];
        for (int i = 0; i < inputs.length; i++) {
            for (int draw = 0; draw < draws; draw++) {
                columns[i][draw] = sample.at(draw, inputs[i]);
            }
            scores[i] = scores(Ranks.of(columns[i]));
        }
        RealMatrix own = CorrelationMatrix.factor(correlations(scores)).orElseThrow(() -> new IllegalArgumentException(
                "Number of draws of correlated inputs is " + draws + " but must be more to be paired anew"));
        RealMatrix turn = target.factor().multiply(new LUDecomposition(own).getSolver().getInverse());
        for (int i = 0; i < inputs.length; i++) {
            paired[inputs[i]] = inOrderOf(columns[i], Ranks.of(mixed(turn.getRow(i), scores)));
        }
    }

    /** Van der Waerden's scores: quantiles of the normal distribution at the ranks. */
    private static double[] scores(int[] ranks) {
        double[] scores = new double[ranks.length];
        for (int draw = 0; draw < ranks.length; draw++) {
            scores[draw] = NormalQuantile.of((ranks[draw] + 1.0) / (ranks.length + 1.0));
        }
        return scores;
    }

    /** Correlations of columns that are all the same numbers in another order, with a mean of 0. */
    private static RealMatrix correlations(double[][] scores) {
        RealMatrix matrix = MatrixUtils.createRealIdentityMatrix(scores.length);
        double square = product(scores[0], scores[0]);
        for (int i = 0; i < scores.length; i++) {
            for (int j = 0; j < i; j++) {
                matrix.setEntry(i, j, product(scores[i], scores[j]) / square);
                matrix.setEntry(j, i, matrix.getEntry(i, j));
            }
        }
        return matrix;
    }

    private static double product(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static double[] mixed(double[] weights, double[][] scores) {
        double[] sum = new double[scores[0].length];
        for (int i = 0; i < scores.length; i++) {
            for (int draw = 0; draw < sum.length; draw++) {
                sum[draw] += weights[i] * scores[i][draw];
            }
        }
        return sum;
    }

    private static double[] inOrderOf(double[] column, int[] ranks) {
        double[] sorted = column.clone();
        Arrays.sort(sorted);
        double[] ordered = new double[column.length];
        for (int draw = 0; draw < ordered.length; draw++) {
            ordered[draw] = sorted[ranks[draw]];
        }
        return ordered;
    }

    @Override
    public int dimensions() {
        return sample.dimensions();
    }

    /**
     * A coordinate.
     *
     * @throws IndexOutOfBoundsException when there is no such draw
     */
    @Override
    public double at(int draw, int dimension) {
        Objects.checkIndex(draw, draws);
        return paired[dimension] == null ? sample.at(draw, dimension) : paired[dimension][draw];
    }
}
