package org.amberyard.core.whatif;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.amberyard.core.math.Checks;

/** A result over all draws, by size: its percentiles and how often it exceeds a value. */
public final class SortedDraws {
    private final double[] sorted;

    private SortedDraws(double[] sorted) {
        this.sorted = sorted;
    }

    /**
     * A point of the exceedance curve.
     *
     * @param value value of the result
     * @param exceeded share of draws above it
     */
    public record Exceedance(double value, double exceeded) {
    }

    /**
     * Of a result in each draw.
     *
     * @throws IllegalArgumentException when there is none or one is not a number
     */
    public static SortedDraws of(double... values) {
        Checks.atLeast("Number of draws", values.length, 1);
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        if (Double.isNaN(sorted[sorted.length - 1])) {
            throw new IllegalArgumentException("Result of a draw is not a number");
        }
        return new SortedDraws(sorted);
    }

    /** The draws in another unit: each times a factor above 0. */
    public SortedDraws times(double factor) {
        return factor == 1 ? this : new SortedDraws(Arrays.stream(sorted).map(draw -> factor * draw).toArray());
    }

    /** Number of draws. */
    public int count() {
        return sorted.length;
    }

    /**
     * The value that a share of draws does not exceed, interpolated between neighbouring draws (type 7 of Hyndman and
     * Fan, see {@link Empirical}).
     *
     * @param share 0 to 1: 0.1, 0.5 and 0.9 for P10, P50 and P90
     */
    public double quantile(double share) {
        double rank = Checks.within("Share", share, 0, 1) * (sorted.length - 1);
        int below = Math.max(0, Math.min((int) rank, sorted.length - 2));
        double part = rank - below;
        return part == 0 ? sorted[below] : sorted[below] * (1 - part) + sorted[below + 1] * part;
    }

    /** Share of draws above a value. */
    public double exceeded(double value) {
        return (double) above(value) / sorted.length;
    }

    /** Number of draws above a value. */
    int above(double value) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] <= value) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return sorted.length - low;
    }

    /**
     * How often each value is exceeded, at equal steps of the share from the smallest draw to the largest.
     *
     * @param steps 1 or more
     */
    public List<Exceedance> exceedance(int steps) {
        Checks.atLeast("Steps of the exceedance curve", steps, 1);
        List<Exceedance> curve = new ArrayList<>();
        for (int step = 0; step <= steps; step++) {
            double share = (double) step / steps;
            curve.add(new Exceedance(quantile(share), 1 - share));
        }
        return curve;
    }
}
