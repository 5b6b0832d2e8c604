package org.amberyard.core.charging;

import java.util.Arrays;

/** Rows of a {@link CutProgram}: Σ slopeₖ·levelₖ − value ≥ bound, or without a value. */
final class CutRows {
    private static final double TOLERANCE = 1e-11;

    /** No value stands in the row. */
    static final int NO_VALUE = -1;

    private final int levels;
    private double[][] slopes = new double[32][];
    private int[] values = new int[32];
    private double[] bounds = new double[32];
    private double[] sizes = new double[32];
    private int count;

    CutRows(int levels) {
        this.levels = levels;
    }

    /**
     * Adds a row and gives its number.
     *
     * @param size size of the figures that the bound is the difference of, whose rounding it carries
     */
    int add(double[] slope, int value, double bound, double size) {
        if (count == bounds.length) {
            slopes = Arrays.copyOf(slopes, 2 * count);
            values = Arrays.copyOf(values, 2 * count);
            bounds = Arrays.copyOf(bounds, 2 * count);
            sizes = Arrays.copyOf(sizes, 2 * count);
        }
        slopes[count] = slope.clone();
        values[count] = value;
        bounds[count] = bound;
        sizes[count] = size;
        return count++;
    }

    void removeLast() {
        count--;
    }

    double bound(int row) {
        return bounds[row];
    }

    void setBound(int row, double bound) {
        bounds[row] = bound;
    }

    /** The row that a solution, levels before values, misses by most and by more than rounding, or the first such; -1 if none. */
    int violated(double[] solution, boolean first) {
        int worst = -1;
        double worstBy = 0;
        for (int row = 0; row < count; row++) {
            double by = missedBy(row, solution);
            if (by > worstBy && isMissed(row, by)) {
                worst = row;
                worstBy = by;
                if (first) {
                    return worst;
                }
            }
        }
        return worst;
    }

    /** True when a solution misses the row by more than rounding. */
    boolean isMissed(int row, double[] solution) {
        return isMissed(row, missedBy(row, solution));
    }

    private boolean isMissed(int row, double by) {
        return by > TOLERANCE * (1 + Math.max(Math.abs(bounds[row]), sizes[row]));
    }

    double missedBy(int row, double[] solution) {
        return bounds[row] - times(row, solution);
    }

    /** The row's left side. */
    double times(int row, double[] column) {
        double sum = values[row] == NO_VALUE ? 0 : -column[levels + values[row]];
        for (int level = 0; level < levels; level++) {
            sum += slopes[row][level] * column[level];
        }
        return sum;
    }
}
