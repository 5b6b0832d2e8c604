package org.amberyard.core.whatif;

import org.amberyard.core.math.Checks;

/**
 * How likely something is, by the independent draws in which it came about.
 *
 * @param hits draws in which it did
 * @param draws all draws, 1 or more
 */
public record Chance(long hits, long draws) {

    public Chance {
        Checks.above("Number of draws", draws, 0);
        Checks.within("Number of draws counted", hits, 0, draws);
    }

    /** Share of draws. */
    public double share() {
        return (double) hits / draws;
    }

    /**
     * The share with its interval by Wilson, "Probable inference, the law of succession, and statistical inference",
     * Journal of the American Statistical Association 22 (1927), 209–212 (from memory), which holds for rare things
     * too.
     *
     * @param confidence above 0 and below 1, such as 0.95
     */
    public Band band(double confidence) {
        double z = Band.deviations(confidence);
        double weight = 1 + z * z / draws;
        double middle = (share() + z * z / (2 * draws)) / weight;
        double reach = z / weight * Math.sqrt(share() * (1 - share()) / draws + z * z / (4.0 * draws * draws));
        // With no hit the lower end is 0, and with nothing but hits the upper one 1; rounding would miss them.
        return new Band(share(), hits == 0 ? 0 : Math.max(0, middle - reach), hits == draws ? 1 : Math.min(1, middle + reach));
    }
}
