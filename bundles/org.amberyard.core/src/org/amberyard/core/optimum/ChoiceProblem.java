package org.amberyard.core.optimum;

import java.util.List;

/**
 * One option is to be chosen in each group, at the least cost, so that what is taken of each resource stays within its limit: a
 * multiple-choice knapsack with several resources.
 *
 * @param groups options by group; each group has at least one
 * @param limits limit of each resource; infinite for none
 */
public record ChoiceProblem(List<List<Choice>> groups, double[] limits) {

    /**
     * @throws IllegalArgumentException when a group has no option, or an option knows other resources than there are limits
     */
    public ChoiceProblem {
        groups = groups.stream().map(List::copyOf).toList();
        limits = limits.clone();
        for (int g = 0; g < groups.size(); g++) {
            if (groups.get(g).isEmpty()) {
                throw new IllegalArgumentException("Group " + g + " has no option");
            }
            for (Choice choice : groups.get(g)) {
                if (choice.use().length != limits.length) {
                    throw new IllegalArgumentException("Group " + g + " has an option with " + choice.use().length
                            + " resources but there are " + limits.length);
                }
            }
        }
    }

    @Override
    public double[] limits() {
        return limits.clone();
    }

    /** Number of resources. */
    int resources() {
        return limits.length;
    }

    /** Limit of a resource. */
    double limit(int resource) {
        return limits[resource];
    }

    /** The option of a group that is cheapest with what it takes at prices; of equals the first. */
    int cheapest(int group, double[] prices) {
        List<Choice> options = groups.get(group);
        int best = 0;
        double least = options.get(0).costAt(prices);
        for (int o = 1; o < options.size(); o++) {
            double cost = options.get(o).costAt(prices);
            if (cost < least) {
                best = o;
                least = cost;
            }
        }
        return best;
    }

    /** The cheapest option of each group at prices. */
    int[] cheapest(double[] prices) {
        int[] picks = new int[groups.size()];
        for (int g = 0; g < picks.length; g++) {
            picks[g] = cheapest(g, prices);
        }
        return picks;
    }

    /** The option picked in a group. */
    Choice picked(int[] picks, int group) {
        return groups.get(group).get(picks[group]);
    }

    /** What picks take of each resource. */
    double[] taken(int[] picks) {
        double[] sums = new double[limits.length];
        for (int g = 0; g < picks.length; g++) {
            picked(picks, g).addTo(sums, 1);
        }
        return sums;
    }

    /** What the limits are worth at prices; a resource without a price or a limit is worth nothing. */
    double limitsAt(double[] prices) {
        double sum = 0;
        for (int r = 0; r < prices.length; r++) {
            sum += prices[r] == 0 ? 0 : prices[r] * limits[r];
        }
        return sum;
    }

    /** What picks cost. */
    public double cost(int[] picks) {
        double sum = 0;
        for (int g = 0; g < picks.length; g++) {
            sum += picked(picks, g).cost();
        }
        return sum;
    }
}
