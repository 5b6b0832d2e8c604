package org.amberyard.core.whatif;

/** What random numbers are used for; uses of one seed have nothing to do with each other. */
enum RandomUse {
    /** A draw of independent numbers. */
    DRAW(1),
    /** The place within a stratum. */
    WITHIN_STRATUM(2),
    /** The order of strata. */
    ORDER(3),
    /** The scrambling of a sequence. */
    SCRAMBLE(4),
    /** Rows taken again, for intervals. */
    RESAMPLE(5),
    /** Seeds of repetitions. */
    REPLICATE(6),
    /** Draws that are kept out of a fit. */
    HELD_OUT(7);

    private final int number;

    RandomUse(int number) {
        this.number = number;
    }

    /** Number of the use in the counter; never changed, as that would change the draws of saved studies. */
    int number() {
        return number;
    }
}
