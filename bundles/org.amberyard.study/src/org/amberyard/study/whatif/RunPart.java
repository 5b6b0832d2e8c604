package org.amberyard.study.whatif;

/** A part of a what-if, in the order in which they are worked out. */
public enum RunPart {
    /** Inputs one at a time. */
    SINGLE("One at a time"),
    /** Named scenarios. */
    SCENARIOS("Scenarios"),
    /** Whole evaluations to which surfaces are fitted, where draws are to be read off these. */
    FIT("Evaluations to fit to"),
    /** Draws of all inputs together. */
    ALL("All together"),
    /** The two widest inputs together. */
    GRID("Two together"),
    /** What explains the variance. */
    SHARES("Variance"),
    /** Where plans cost the same. */
    BREAK_EVEN("Break-even");

    private final String label;

    RunPart(String label) {
        this.label = label;
    }

    /** True for parts of very many variants, for which surfaces may stand in. */
    boolean isOfMany() {
        return this == ALL || this == SHARES || this == BREAK_EVEN;
    }

    /** Name for progress and messages. */
    public String label() {
        return label;
    }
}
