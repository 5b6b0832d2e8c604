package org.amberyard.core.air;

/** Which power plants answer for charging. */
public enum GridBasis {
    /** All plants in the mean: what an inventory counts. */
    AVERAGE("average"),
    /** Those that run more because buses charge: what a change causes. */
    MARGINAL("marginal");

    private final String label;

    GridBasis(String label) {
        this.label = label;
    }

    /** Name for tables. */
    public String label() {
        return label;
    }
}
