package org.amberyard.core.whatif;

import java.util.Arrays;
import org.amberyard.core.math.Checks;

/** Results of an {@link IndexPlan} by row, and the estimators over any of its rows. */
final class IndexRows {
    private final double[] results;
    private final int groups;
    private final int count;

    private IndexRows(double[] results, int groups, int count) {
        this.results = results;
        this.groups = groups;
        this.count = count;
    }

    /**
     * Takes the mean of all results off, which does not change the indices but keeps digits where results vary little.
     */
    static IndexRows of(double[] results, int groups) {
        int count = Checks.atLeast("Number of rows", results.length / (groups + 2), 2);
        double[] centred = new double[count * (groups + 2)];
        double mean = Moments.of(results, 0, centred.length).mean();
        for (int i = 0; i < centred.length; i++) {
            centred[i] = results[i] - mean;
        }
        return new IndexRows(centred, groups, count);
    }

    int count() {
        return count;
    }

    /** First-order index of each group over some rows. */
    double[] first(int[] rows) {
        double[] first = new double[groups];
        for (int group = 0; group < groups; group++) {
            first[group] = first(group, rows);
        }
        return first;
    }

    private double first(int group, int[] rows) {
        double sum = 0;
        double squares = 0;
        double products = 0;
        for (int row : rows) {
            double second = results[row * (groups + 2) + 1];
            double exchanged = results[row * (groups + 2) + 2 + group];
            sum += second + exchanged;
            squares += second * second + exchanged * exchanged;
            products += second * exchanged;
        }
        double mean = sum / (2.0 * rows.length);
        double variance = squares / (2.0 * rows.length) - mean * mean;
        return variance > 0 ? (products / rows.length - mean * mean) / variance : 0;
    }

    /** Total index of each group over some rows. */
    double[] total(int[] rows) {
        double[] sums = new double[groups];
        for (int row : rows) {
            int at = row * (groups + 2);
            for (int group = 0; group < groups; group++) {
                double apart = results[at] - results[at + 2 + group];
                sums[group] += apart * apart;
            }
        }
        double whole = 2 * rows.length * variance(rows);
        return Arrays.stream(sums).map(square -> whole > 0 ? square / whole : 0).toArray();
    }

    private double variance(int[] rows) {
        double sum = 0;
        double squares = 0;
        for (int row : rows) {
            double a = results[row * (groups + 2)];
            double b = results[row * (groups + 2) + 1];
            sum += a + b;
            squares += a * a + b * b;
        }
        double mean = sum / (2.0 * rows.length);
        return squares / (2.0 * rows.length) - mean * mean;
    }
}
