package org.amberyard.core.air;

/** How far a factor can be trusted. */
public enum FactorQuality {
    /** Stands in until a real value is found. */
    PLACEHOLDER("placeholder"),
    /** Nobody said where it is from. */
    UNKNOWN("no source given"),
    /** A value that comes with the program; its citation says where it is from. */
    DEFAULT("default"),
    /** Assumed by whoever made the study. */
    ASSUMED("assumed"),
    /** From an offer. */
    QUOTED("quoted"),
    /** From a document that is cited. */
    PUBLISHED("published"),
    /** Measured. */
    MEASURED("measured");

    private final String label;

    FactorQuality(String label) {
        this.label = label;
    }

    /** Name for tables. */
    public String label() {
        return label;
    }

    /** True when figures that rest on such a factor may not be submitted to anybody. */
    public boolean isPlaceholder() {
        return this == PLACEHOLDER || this == UNKNOWN;
    }
}
