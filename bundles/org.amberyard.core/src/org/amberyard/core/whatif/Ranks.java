package org.amberyard.core.whatif;

import java.util.Arrays;

/** Ranks of numbers, and how far the ranks of two columns go together. */
public final class Ranks {
    private Ranks() {
    }

    /** Rank of each number from 0, equal numbers ranked by their place. */
    static int[] of(double[] numbers) {
        double[] sorted = numbers.clone();
        Arrays.sort(sorted);
        int[] taken = new int[numbers.length];
        int[] ranks = new int[numbers.length];
        for (int i = 0; i < numbers.length; i++) {
            int first = first(sorted, numbers[i]);
            ranks[i] = first + taken[first]++;
        }
        return ranks;
    }

    private static int first(double[] sorted, double number) {
        int low = 0;
        int high = sorted.length - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (Double.compare(sorted[middle], number) < 0) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /**
     * Spearman's rank correlation of two columns of the same length without equal numbers: 1 − 6 Σ d² / (n³ − n).
     *
     * @return from −1 to 1
     */
    public static double correlation(double[] first, double[] second) {
        int[] a = of(first);
        int[] b = of(second);
        double squares = 0;
        for (int i = 0; i < a.length; i++) {
            double apart = a[i] - b[i];
            squares += apart * apart;
        }
        double n = a.length;
        return 1 - 6 * squares / (n * n * n - n);
    }
}
