package org.amberyard.core.charging;

import java.util.Arrays;

/**
 * A linear programme in few unknowns that grows by cuts: minimise Σ priceₖ·levelₖ − Σ weightᵢ·valueᵢ where every row says
 * Σ slopeₖ·levelₖ − valueᵢ ≥ bound (or without a value). Solved exactly by the dual simplex method with an explicit inverse of
 * the basis; rows are kept, so that it can be solved again with other costs or bounds.
 */
final class CutProgram {
    private static final double TOLERANCE = 1e-11;
    private static final int PIVOTS_BEFORE_FIRST_INDEX_RULE = 500;

    /** No value stands in the row. */
    static final int NO_VALUE = -1;

    private final int levels;
    private final int unknowns;
    private final double[] costs;
    private double[][] slopes;
    private int[] values;
    private double[] bounds;
    private int rows;
    private final int[] basis;
    private final double[][] inverse;
    private final double[] duals;
    private final double[] solution;
    private final double[] shares;

    /**
     * @param lowestLevels lower bounds of the levels; they are the first rows
     * @param highestValues upper bounds of the values; they are the next rows
     */
    CutProgram(double[] lowestLevels, double[] highestValues) {
        levels = lowestLevels.length;
        unknowns = levels + highestValues.length;
        costs = new double[unknowns];
        slopes = new double[2 * unknowns + 8][];
        values = new int[slopes.length];
        bounds = new double[slopes.length];
        basis = new int[unknowns];
        inverse = new double[unknowns][unknowns];
        duals = new double[unknowns];
        solution = new double[unknowns];
        shares = new double[unknowns];
        for (int level = 0; level < levels; level++) {
            double[] slope = new double[levels];
            slope[level] = 1;
            addRow(slope, NO_VALUE, lowestLevels[level]);
        }
        for (int value = 0; value < highestValues.length; value++) {
            addRow(new double[levels], value, -highestValues[value]);
        }
    }

    /** Adds a row and gives its number. */
    int addRow(double[] slope, int value, double bound) {
        if (rows == bounds.length) {
            slopes = Arrays.copyOf(slopes, 2 * rows);
            values = Arrays.copyOf(values, 2 * rows);
            bounds = Arrays.copyOf(bounds, 2 * rows);
        }
        slopes[rows] = slope.clone();
        values[rows] = value;
        bounds[rows] = bound;
        return rows++;
    }

    /** Adds a row if the last solution violates it; false when it does not, by more than rounding. */
    boolean cut(double[] slope, int value, double bound) {
        addRow(slope, value, bound);
        boolean violated = isShort(rows - 1, shortOf(rows - 1));
        rows -= violated ? 0 : 1;
        return violated;
    }

    private boolean isShort(int row, double by) {
        return by > TOLERANCE * (1 + Math.abs(bounds[row]));
    }

    void setBound(int row, double bound) {
        bounds[row] = bound;
    }

    void setPrice(int level, double price) {
        costs[level] = price;
    }

    void setWeight(int value, double weight) {
        costs[levels + value] = -weight;
    }

    double level(int level) {
        return solution[level];
    }

    double value(int value) {
        return solution[levels + value];
    }

    /** Lowest cost. */
    double cost() {
        double cost = 0;
        for (int unknown = 0; unknown < unknowns; unknown++) {
            cost += costs[unknown] * solution[unknown];
        }
        return cost;
    }

    /** How much the lowest cost rises with the bound of a row. */
    double dual(int row) {
        for (int place = 0; place < unknowns; place++) {
            if (basis[place] == row) {
                return duals[place];
            }
        }
        return 0;
    }

    /** Solves from the bounds of levels and values; false when no levels satisfy all rows. */
    boolean solve() {
        start();
        for (int pivots = 0;; pivots++) {
            boolean firstIndex = pivots > PIVOTS_BEFORE_FIRST_INDEX_RULE;
            int entering = violatedRow(firstIndex);
            if (entering < 0) {
                return true;
            }
            int leaving = leaving(entering);
            if (leaving < 0) {
                return false;
            }
            exchange(entering, leaving);
        }
    }

    private void start() {
        for (int place = 0; place < unknowns; place++) {
            basis[place] = place;
            Arrays.fill(inverse[place], 0);
            double sign = place < levels ? 1 : -1;
            inverse[place][place] = sign;
            duals[place] = sign * costs[place];
            solution[place] = sign * bounds[place];
        }
    }

    private int violatedRow(boolean firstIndex) {
        int worst = -1;
        double worstBy = 0;
        for (int row = 0; row < rows; row++) {
            double by = shortOf(row);
            if (by > worstBy && isShort(row, by)) {
                worst = row;
                worstBy = by;
                if (firstIndex) {
                    return worst;
                }
            }
        }
        return worst;
    }

    private double shortOf(int row) {
        double by = bounds[row];
        double[] slope = slopes[row];
        for (int level = 0; level < levels; level++) {
            by -= slope[level] * solution[level];
        }
        return values[row] == NO_VALUE ? by : by + solution[levels + values[row]];
    }

    private int leaving(int entering) {
        int leaving = -1;
        double smallest = Double.POSITIVE_INFINITY;
        for (int place = 0; place < unknowns; place++) {
            shares[place] = share(entering, place);
            if (shares[place] > TOLERANCE) {
                double ratio = Math.max(0, duals[place]) / shares[place];
                if (ratio < smallest || ratio == smallest && basis[place] < basis[leaving]) {
                    smallest = ratio;
                    leaving = place;
                }
            }
        }
        return leaving;
    }

    private double share(int row, int place) {
        double[] column = inverse[place];
        double share = values[row] == NO_VALUE ? 0 : -column[levels + values[row]];
        for (int level = 0; level < levels; level++) {
            share += slopes[row][level] * column[level];
        }
        return share;
    }

    private void exchange(int entering, int leaving) {
        double by = shortOf(entering);
        double[] pivot = inverse[leaving];
        for (int unknown = 0; unknown < unknowns; unknown++) {
            pivot[unknown] /= shares[leaving];
            solution[unknown] += by * pivot[unknown];
        }
        duals[leaving] = Math.max(0, duals[leaving]) / shares[leaving];
        for (int place = 0; place < unknowns; place++) {
            if (place != leaving && shares[place] != 0) {
                duals[place] -= shares[place] * duals[leaving];
                for (int unknown = 0; unknown < unknowns; unknown++) {
                    inverse[place][unknown] -= shares[place] * pivot[unknown];
                }
            }
        }
        basis[leaving] = entering;
    }
}
