package org.amberyard.core.variants;

import java.util.List;

/** Plans in the scenarios of a study. */
public final class Scenarios {
    private final List<String> names;
    private final double[][] presentCosts;
    private final double[][] co2eKg;

    public Scenarios(List<String> names, double[][] presentCosts, double[][] co2eKg) {
        this.names = names;
        this.presentCosts = presentCosts;
        this.co2eKg = co2eKg;
    }

    /** Names of the scenarios. */
    public List<String> names() {
        return names;
    }

    /** Present cost of a plan in a scenario. */
    public double presentCost(int plan, int scenario) {
        return presentCosts[plan][scenario];
    }

    /** Greenhouse gas of a plan in a scenario, kg. */
    public double co2eKg(int plan, int scenario) {
        return co2eKg[plan][scenario];
    }
}
