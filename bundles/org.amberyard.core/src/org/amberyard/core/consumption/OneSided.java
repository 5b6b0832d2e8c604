package org.amberyard.core.consumption;

import java.util.List;
import java.util.Optional;

/**
 * Whether what a curve misses lies to one side in a group of logs, such as those of the cold or of one bus.
 *
 * <p>Two tests are asked: the sign test on how many logs lie above the curve (W. J. Dixon and A. M. Mood, “The Statistical Sign Test”,
 * Journal of the American Statistical Association 41, 1946; from memory), and the mean of the differences, as shares of the measured
 * energy, against twice its standard error (common practice, no source). One that says so is enough to look at the logs.
 *
 * @param logs number of logs in the group
 * @param above how many lie above the curve
 * @param signChance chance of a split as uneven or more where both sides are equally likely
 * @param meanShare mean of measured less fitted, as a share of the measured energy
 * @param errorShare standard error of that mean
 */
public record OneSided(int logs, int above, double signChance, double meanShare, double errorShare) {
    /** Fewer logs than this tell nothing of a side: even all on one side would come about by chance. */
    public static final int LEAST_LOGS = 6;
    private static final double UNLIKELY = 0.05;
    private static final double ERRORS = 2;

    /** The test of a group; empty where it has too few logs. */
    public static Optional<OneSided> of(List<Residual> group) {
        int logs = group.size();
        if (logs < LEAST_LOGS) {
            return Optional.empty();
        }
        int above = (int) group.stream().filter(r -> r.kwh() > 0).count();
        double mean = group.stream().mapToDouble(Residual::share).average().orElseThrow();
        double squares = group.stream().mapToDouble(r -> (r.share() - mean) * (r.share() - mean)).sum();
        return Optional.of(new OneSided(logs, above, signChance(logs, above), mean, Math.sqrt(squares / (logs - 1) / logs)));
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

    /** True where one of the tests finds a side. */
    public boolean holds() {
        return signChance < UNLIKELY || Math.abs(meanShare) > ERRORS * errorShare;
    }
}
