package org.amberyard.core.whatif;

import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Rank correlations that a pair of inputs may have when all other correlations are as they are. Given the other inputs,
 * what is left of the two may be correlated anyhow between −1 and 1; that makes a range for the pair itself.
 *
 * @param low lowest
 * @param high highest
 */
record PairRange(double low, double high) {

    /** The range of a pair; empty when the others cannot hold together whatever the pair is. */
    static Optional<PairRange> of(RealMatrix scores, int first, int second) {
        int[] others = IntStream.range(0, scores.getRowDimension()).filter(i -> i != first && i != second).toArray();
        if (others.length == 0) {
            return Optional.of(new PairRange(-1, 1));
        }
        RealMatrix among = scores.getSubMatrix(others, others);
        if (CorrelationMatrix.factor(among).isEmpty()) {
            return Optional.empty();
        }
        RealVector withFirst = scores.getSubMatrix(others, new int[] {first}).getColumnVector(0);
        RealVector withSecond = scores.getSubMatrix(others, new int[] {second}).getColumnVector(0);
        RealVector weights = new LUDecomposition(among).getSolver().solve(withFirst);
        RealVector otherWeights = new LUDecomposition(among).getSolver().solve(withSecond);
        double left = 1 - weights.dotProduct(withFirst);
        double otherLeft = 1 - otherWeights.dotProduct(withSecond);
        return left > 0 && otherLeft > 0
                ? Optional.of(around(weights.dotProduct(withSecond), Math.sqrt(left * otherLeft)))
                : Optional.empty();
    }

    private static PairRange around(double middle, double reach) {
        return new PairRange(RankCorrelation.ofRanks(Math.max(-1, middle - reach)),
                RankCorrelation.ofRanks(Math.min(1, middle + reach)));
    }
}
