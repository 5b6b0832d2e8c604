package org.amberyard.core.consumption;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.math.StudentT;

/**
 * Whether what a curve misses lies to one side in a group of logs, such as those of the cold or of one bus.
 *
 * <p>Two tests are asked: the sign test on how many logs lie above the curve, those on it left out (W. J. Dixon and A. M. Mood, “The
 * Statistical Sign Test”, Journal of the American Statistical Association 41, 1946; from memory), and the mean of the differences, as shares
 * of the measured energy, over its standard error, by Student’s distribution (common practice, no source). One that says so is enough, but
 * five in a hundred fits that are fair are to be warned of at most, however many groups are looked at: each test of each group takes its
 * even part of the five (Bonferroni; from memory).
 *
 * @param logs number of logs in the group
 * @param above how many lie above the curve
 * @param signChance chance of a split as uneven or more where both sides are equally likely
 * @param meanShare mean of measured less fitted, as a share of the measured energy
 * @param errorShare standard error of that mean
 */
public record OneSided(int logs, int above, double signChance, double meanShare, double errorShare) {
    /** Fewer logs than this are not judged (common practice, no source). */
    public static final int LEAST_LOGS = 6;
    private static final double UNLIKELY = 0.05;
    private static final int TESTS = 2;
    /** Share of the measured energy below which a difference is rounding, and the log lies on the curve. */
    private static final double ROUNDING = 1e-9;

    /** The test of a group; empty where it has too few logs. */
    public static Optional<OneSided> of(List<Residual> group) {
        int logs = group.size();
        if (logs < LEAST_LOGS) {
            return Optional.empty();
        }
        double[] shares = group.stream().mapToDouble(Residual::share).map(s -> Math.abs(s) < ROUNDING ? 0 : s).toArray();
        int above = (int) Arrays.stream(shares).filter(s -> s > 0).count();
        int below = (int) Arrays.stream(shares).filter(s -> s < 0).count();
        double mean = Arrays.stream(shares).average().orElseThrow();
        double squares = Arrays.stream(shares).map(s -> (s - mean) * (s - mean)).sum();
        return Optional.of(new OneSided(logs, above, signChance(above + below, above), mean, Math.sqrt(squares / (logs - 1) / logs)));
    }

    /** Chance that of so many logs no more lie on the rarer side, or no more on the other, each side as likely as the other. */
    static double signChance(int logs, int above) {
        int rarer = Math.min(above, logs - above);
        double term = Math.pow(0.5, logs);
        double sum = 0;
        for (int k = 0; k <= rarer; k++) {
            sum += term;
            term *= (double) (logs - k) / (k + 1);
        }
        return Math.min(1, 2 * sum);
    }

    /** Chance of a mean as far to one side or farther where there is none. */
    double meanChance() {
        return meanShare == 0 ? 1 : StudentT.chance(meanShare / errorShare, logs - 1);
    }

    /**
     * True where one of the tests finds a side.
     *
     * @param groups how many groups of the fit are looked at, this one included
     */
    public boolean holds(int groups) {
        return Math.min(signChance, meanChance()) < UNLIKELY / TESTS / groups;
    }
}
