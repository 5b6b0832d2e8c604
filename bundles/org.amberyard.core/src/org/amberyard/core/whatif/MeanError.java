package org.amberyard.core.whatif;

import java.util.Arrays;
import org.amberyard.core.math.Checks;

/** Gathers the mean of a result and its standard error, stretch by stretch of draws in rising order. */
final class MeanError {
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
     * Of independent draws from their scatter, of replicates from the scatter of their means; not a number of too few.
     */
    double standardError() {
        Moments scatter = samples.length == 1 ? samples[0]
                : Moments.of(Arrays.stream(samples).filter(s -> s.count() > 0).mapToDouble(Moments::mean).toArray());
        return scatter.count() < 2 ? Double.NaN : scatter.standardError();
    }
}
