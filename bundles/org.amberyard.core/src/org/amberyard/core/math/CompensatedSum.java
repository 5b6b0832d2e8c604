package org.amberyard.core.math;

/**
 * The sum of many numbers with what rounding takes from it added again (Kahan 1965), to the bit as the standard library's streams
 * sum, without making a stream.
 */
public final class CompensatedSum {
    private CompensatedSum() {
    }

    /** The sum of finite numbers. */
    public static double of(double[] numbers) {
        double sum = 0;
        double over = 0;
        for (double number : numbers) {
            double corrected = number - over;
            double next = sum + corrected;
            over = next - sum - corrected;
            sum = next;
        }
        return sum - over;
    }
}
