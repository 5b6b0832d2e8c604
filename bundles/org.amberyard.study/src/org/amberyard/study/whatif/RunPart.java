package org.amberyard.study.whatif;

/** A part of a what-if, in the order in which they are worked out. */
public enum RunPart {
    /** Inputs one at a time. */
    SINGLE("One at a time"),
    /** Named scenarios. */
    SCENARIOS("Scenarios"),
    /** Whole evaluations to which surfaces are fitted and on which they are checked, where draws are to be read off these. */
    FIT("Evaluations to fit to and to check on"),
    /** Draws of all inputs together. */
    ALL("All together"),
    /** Two inputs together: those that the study names, else the widest. */
    GRID("Two together"),
    /** What explains the variance. */
    SHARES("Variance"),
    /** Where plans cost the same along each input by itself. */
    BREAK_EVENS_ALONE("Break-even of each input"),
    /** Where plans cost the same along the widest input, for values of the second. */
    BREAK_EVEN("Break-even"),
    /** The same over a grid of the second and the third. */
    BREAK_EVEN_SURFACE("Break-even over two inputs");

    private final String label;

    RunPart(String label) {
        this.label = label;
    }

    /** True for parts of very many variants, for which surfaces may stand in. */
    boolean isOfMany() {
        return this == ALL || this == SHARES;
    }

    /** True for parts that search, each variant by what the one before has shown. */
    boolean isSearch() {
        return this == BREAK_EVENS_ALONE || this == BREAK_EVEN || this == BREAK_EVEN_SURFACE;
    }

    /** Name for progress and messages. */
    public String label() {
        return label;
    }
}
