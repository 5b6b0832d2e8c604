package org.amberyard.core.math;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The sum of many numbers with what rounding takes from it added again (Kahan 1965), to the bit as the standard library's streams
 * sum, without making a stream.
 */
public final class CompensatedSum {
    private double sum;
    private double over;

    private CompensatedSum() {
    }

    /** The sum of finite numbers. */
    public static double of(double[] numbers) {
        CompensatedSum all = new CompensatedSum();
        for (double number : numbers) {
            all.add(number);
        }
        return all.total();
    }

    /** The sum of a finite number of each thing. */
    public static <T> double of(List<T> things, ToDoubleFunction<? super T> number) {
        CompensatedSum all = new CompensatedSum();
        for (T thing : things) {
            all.add(number.applyAsDouble(thing));
        }
        return all.total();
    }

    /** The sums of the first of some things, of the first two, and so on, by a finite number of each. */
    public static <T> double[] upTo(List<T> things, ToDoubleFunction<? super T> number) {
        CompensatedSum all = new CompensatedSum();
        double[] sums = new double[things.size()];
        for (int last = 0; last < sums.length; last++) {
            all.add(number.applyAsDouble(things.get(last)));
            sums[last] = all.total();
        }
        return sums;
    }

    private void add(double number) {
        double corrected = number - over;
        double next = sum + corrected;
        over = next - sum - corrected;
        sum = next;
    }

    private double total() {
        return sum - over;
    }
}
