package org.amberyard.core.charging;

/** How the yard charges. */
public enum ChargePolicy {
    /** Each bus charges at full power as soon as it is plugged in. */
    AT_ONCE("at once"),
    /** Each bus charges at full power from a set time of the night; between runs at once. */
    SET_TIME("at a set time"),
    /** Each bus charges evenly until it leaves. */
    SPREAD("spread to departure"),
    /** The schedule of the lowest bill that has every bus ready. */
    LEAST_COST("least cost");

    private final String label;

    ChargePolicy(String label) {
        this.label = label;
    }

    /** Words for tables and charts. */
    public String label() {
        return label;
    }
}
