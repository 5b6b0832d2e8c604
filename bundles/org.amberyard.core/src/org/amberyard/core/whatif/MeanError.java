package org.amberyard.core.whatif;

import java.util.Arrays;
import org.amberyard.core.math.Checks;
import org.apache.commons.math3.distribution.TDistribution;

/** Gathers the mean of a result and its standard error, stretch by stretch of draws in rising order. */
final class MeanError {
    private static final double UPPER_QUANTILE = 0.975;

    private final Moments[] samples;

    /**
     * Nothing gathered.
     *
     * @param replicates independent samples that the draws were taken from in turn; 1 when each draw is independent
     */
    MeanError(int replicates) {
        this.samples = new Moments[Checks.atLeast("Number of replicates", replicates, 1)];
        Arrays.fill(samples, Moments.NONE);
    }

    /**
     * Adds some draws.
     *
     * @param firstDraw number of the draw at the first place
     */
    void add(double[] values, int firstDraw, int from, int to) {
        if (samples.length == 1) {
            samples[0] = samples[0].plus(Moments.of(values, from, to));
            return;
        }
        for (int i = from; i < to; i++) {
            int sample = (firstDraw + i - from) % samples.length;
            samples[sample] = samples[sample].plus(new Moments(1, values[i], 0));
        }
    }

    long draws() {
        return all().count();
    }

    double mean() {
        return all().mean();
    }

    private Moments all() {
        return Arrays.stream(samples).reduce(Moments.NONE, Moments::plus);
    }

    /**
     * Of independent draws from their scatter, of replicates from the scatter of their means; not a number of too few. A few
     * means tell their scatter badly, so it is widened by as much as Student's distribution of 95 % is wider than the normal
     * one (Student, "The probable error of a mean", Biometrika 6 (1908), 1–25, from memory).
     */
    double standardError() {
        Moments scatter = samples.length == 1 ? samples[0]
                : Moments.of(Arrays.stream(samples).filter(s -> s.count() > 0).mapToDouble(Moments::mean).toArray());
        return scatter.count() < 2 ? Double.NaN : widening(scatter.count() - 1) * scatter.standardError();
    }

    private static double widening(long freedom) {
        return new TDistribution(freedom).inverseCumulativeProbability(UPPER_QUANTILE) / NormalQuantile.of(UPPER_QUANTILE);
    }
}
