package org.amberyard.core.charging;

import java.util.Arrays;

/**
 * A linear programme in few unknowns that grows by cuts: minimise Σ priceₖ·levelₖ − Σ weightᵢ·valueᵢ where every row says
 * Σ slopeₖ·levelₖ − valueᵢ ≥ bound, or the same without a value. It is solved by the dual simplex method with an explicit
 * inverse of the basis; rows are kept, so that it can be solved again with other costs or bounds.
 */
final class CutProgram {
    private static final double LEAST_PIVOT = 1e-11;
    private static final int PIVOTS_BEFORE_FIRST_INDEX_RULE = 500;

    private final int levels;
    private final int unknowns;
    private final double[] costs;
    private final CutRows rows;
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
        rows = new CutRows(levels);
        basis = new int[unknowns];
        inverse = new double[unknowns][unknowns];
        duals = new double[unknowns];
        solution = new double[unknowns];
        shares = new double[unknowns];
        for (int level = 0; level < levels; level++) {
            double[] slope = new double[levels];
            slope[level] = 1;
            addRow(slope, CutRows.NO_VALUE, lowestLevels[level]);
        }
        for (int value = 0; value < highestValues.length; value++) {
            addRow(new double[levels], value, -highestValues[value]);
        }
    }

    /** Adds a row and gives its number. */
    int addRow(double[] slope, int value, double bound) {
        return rows.add(slope, value, bound, 0);
    }

    /**
     * Adds a row if the last solution misses it by more than rounding; false when it does not.
     *
     * @param size size of the figures that the bound is the difference of
     */
    boolean cut(double[] slope, int value, double bound, double size) {
        boolean missed = rows.isMissed(rows.add(slope, value, bound, size), solution);
        if (!missed) {
            rows.removeLast();
        }
        return missed;
    }

    void setBound(int row, double bound) {
        rows.setBound(row, bound);
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
            int entering = rows.violated(solution, firstIndex);
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
            solution[place] = sign * rows.bound(place);
        }
    }

    private int leaving(int entering) {
        int leaving = -1;
        double smallest = Double.POSITIVE_INFINITY;
        for (int place = 0; place < unknowns; place++) {
            shares[place] = rows.times(entering, inverse[place]);
            if (shares[place] > LEAST_PIVOT) {
                double ratio = Math.max(0, duals[place]) / shares[place];
                if (ratio < smallest || ratio == smallest && basis[place] < basis[leaving]) {
                    smallest = ratio;
                    leaving = place;
                }
            }
        }
        return leaving;
    }

    private void exchange(int entering, int leaving) {
        double by = rows.missedBy(entering, solution);
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
