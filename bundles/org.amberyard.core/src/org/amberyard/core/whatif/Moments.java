package org.amberyard.core.whatif;

import org.amberyard.core.math.Checks;

/**
 * Mean and scatter of numbers, put together from parts. Parts are joined in an order that follows from places alone, so
 * that the same numbers give the same bits whoever worked out which part: Chan, Golub and LeVeque, "Algorithms for
 * computing the sample variance: analysis and recommendations", The American Statistician 37 (1983), 242–247 (from
 * memory).
 *
 * @param count how many numbers
 * @param mean their mean, 0 of none
 * @param squares sum of the squares of their distances from the mean
 */
public record Moments(long count, double mean, double squares) {
    /** Of no number. */
    public static final Moments NONE = new Moments(0, 0, 0);

    private static final int ONE_GO = 128;

    /** Of all numbers. */
    public static Moments of(double... numbers) {
        return of(numbers, 0, numbers.length);
    }

    /**
     * Of the numbers at some places, halved until few are left.
     *
     * @param from first place
     * @param to place behind the last
     */
    public static Moments of(double[] numbers, int from, int to) {
        if (to - from > ONE_GO) {
            int middle = (from + to) >>> 1;
            return of(numbers, from, middle).plus(of(numbers, middle, to));
        }
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += numbers[i];
        }
        double mean = to > from ? sum / (to - from) : 0;
        double squares = 0;
        for (int i = from; i < to; i++) {
            squares += (numbers[i] - mean) * (numbers[i] - mean);
        }
        return new Moments(to - from, mean, squares);
    }

    /** Of these numbers and the ones of a later part. */
    public Moments plus(Moments later) {
        if (count == 0 || later.count == 0) {
            return count == 0 ? later : this;
        }
        long both = count + later.count;
        double apart = later.mean - mean;
        double share = (double) later.count / both;
        return new Moments(both, mean + apart * share, squares + later.squares + apart * apart * count * share);
    }

    /**
     * Variance of what the numbers are a sample of.
     *
     * @throws IllegalArgumentException for fewer than two numbers
     */
    public double variance() {
        return squares / (Checks.above("Number of draws", count, 1) - 1);
    }

    /** Standard deviation of what the numbers are a sample of. */
    public double sd() {
        return Math.sqrt(variance());
    }

    /** Standard error of the mean of independent draws. */
    public double standardError() {
        return sd() / Math.sqrt(count);
    }
}
