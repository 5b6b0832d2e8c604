package org.amberyard.core.optimum;

import java.util.Arrays;

/**
 * An option of a group.
 *
 * @param cost what it costs
 * @param use what it takes of each resource; below zero where it gives
 */
public record Choice(double cost, double[] use) {

    public Choice {
        use = use.clone();
    }

    @Override
    public double[] use() {
        return use.clone();
    }

    /** What it takes of a resource. */
    double use(int resource) {
        return use[resource];
    }

    /** Its cost with what it takes at a price for each resource. */
    double costAt(double[] prices) {
        double sum = cost;
        for (int r = 0; r < prices.length; r++) {
            sum += prices[r] * use[r];
        }
        return sum;
    }

    /** Adds what it takes to sums, times a factor. */
    void addTo(double[] sums, int factor) {
        for (int r = 0; r < sums.length; r++) {
            sums[r] += factor * use[r];
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Choice choice && choice.cost == cost && Arrays.equals(choice.use, use);
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(cost) + Arrays.hashCode(use);
    }

    @Override
    public String toString() {
        return cost + " taking " + Arrays.toString(use);
    }
}
