package org.amberyard.core.whatif;

import org.amberyard.core.math.Checks;

/**
 * How far two inputs go together, by their ranks.
 *
 * @param first place of an input
 * @param second place of another
 * @param target Spearman's rank correlation that is asked for, −1 to 1, both left out
 */
public record RankCorrelation(int first, int second, double target) {

    public RankCorrelation {
        Checks.atLeast("Place of an input in a correlation", Math.min(first, second), 0);
        if (first == second) {
            throw new IllegalArgumentException("A correlation needs two inputs but has input " + first + " twice");
        }
        if (!(Math.abs(target) < 1)) {
            throw new IllegalArgumentException("Correlation is " + target + " but must be above -1 and below 1");
        }
    }

    /** True for a correlation of the same two inputs. */
    boolean isOf(int one, int other) {
        return first == one && second == other || first == other && second == one;
    }

    /**
     * Correlation of normal scores whose ranks have a correlation: 2 sin(π r / 6), exact for the bivariate normal
     * distribution (Pearson 1907, from memory).
     */
    static double ofScores(double ofRanks) {
        return 2 * Math.sin(Math.PI * ofRanks / 6);
    }

    /** The other way round. */
    static double ofRanks(double ofScores) {
        return 6 / Math.PI * Math.asin(ofScores / 2);
    }
}
