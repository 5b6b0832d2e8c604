package org.amberyard.core.whatif;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Correlations between all inputs that are correlated with any, as correlations of normal scores; checked that inputs
 * can be correlated in that way.
 */
final class CorrelationMatrix {
    private static final double SYMMETRY = 1e-12;
    /** What must be left of the variance of an input when the inputs before it are known. */
    private static final double LEAST_VARIANCE = 1e-9;

    private final int[] inputs;
    private final RealMatrix factor;

    private CorrelationMatrix(int[] inputs, RealMatrix factor) {
        this.inputs = inputs;
        this.factor = factor;
    }

    /**
     * The matrix of some correlations; pairs that are not named are not correlated.
     *
     * @param names names of all inputs, for the message
     * @throws IllegalArgumentException when a pair is named twice or the correlations cannot all hold
     */
    static CorrelationMatrix of(List<String> names, List<RankCorrelation> correlations) {
        checkOnce(names, correlations);
        int[] inputs = correlations.stream().flatMapToInt(c -> IntStream.of(c.first(), c.second())).distinct().sorted()
                .toArray();
        RealMatrix scores = scores(inputs, correlations);
        RealMatrix factor = factor(scores).orElseThrow(() -> new IllegalArgumentException(
                new ImpossibleCorrelation(names, inputs, correlations, scores).message()));
        return new CorrelationMatrix(inputs, factor);
    }

    private static void checkOnce(List<String> names, List<RankCorrelation> correlations) {
        for (RankCorrelation one : correlations) {
            if (Math.max(one.first(), one.second()) >= names.size()) {
                throw new IllegalArgumentException("Place of an input in a correlation is "
                        + Math.max(one.first(), one.second())
                        + " but must be below the number of inputs, " + names.size());
            }
            if (correlations.stream().filter(other -> other.isOf(one.first(), one.second())).count() > 1) {
                throw new IllegalArgumentException("Correlation of " + names.get(one.first()) + " with "
                        + names.get(one.second()) + " is given more than once");
            }
        }
    }

    private static RealMatrix scores(int[] inputs, List<RankCorrelation> correlations) {
        RealMatrix scores = MatrixUtils.createRealIdentityMatrix(Math.max(1, inputs.length));
        for (RankCorrelation correlation : correlations) {
            int row = place(inputs, correlation.first());
            int column = place(inputs, correlation.second());
            scores.setEntry(row, column, RankCorrelation.ofScores(correlation.target()));
            scores.setEntry(column, row, scores.getEntry(row, column));
        }
        return scores;
    }

    /** Place of an input among those of a matrix. */
    static int place(int[] inputs, int input) {
        return IntStream.range(0, inputs.length).filter(i -> inputs[i] == input).findFirst().orElseThrow();
    }

    /** Lower triangle L with L Lᵀ the matrix; empty when the matrix is not positive definite. */
    static Optional<RealMatrix> factor(RealMatrix matrix) {
        try {
            return Optional.of(new CholeskyDecomposition(matrix, SYMMETRY, LEAST_VARIANCE).getL());
        } catch (NonPositiveDefiniteMatrixException e) {
            return Optional.empty();
        }
    }

    /** Places of the inputs that are correlated with any, in rising order. */
    int[] inputs() {
        return inputs;
    }

    /** Lower triangle L with L Lᵀ the correlations of scores. */
    RealMatrix factor() {
        return factor;
    }
}
