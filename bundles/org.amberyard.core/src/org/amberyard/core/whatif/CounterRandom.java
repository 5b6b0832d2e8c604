package org.amberyard.core.whatif;

/**
 * Random numbers by seed, draw and variable: the same whatever was asked before, in which order, and on which thread.
 *
 * @param seed any number
 * @param use what they are used for
 */
record CounterRandom(long seed, RandomUse use) {
    private static final double STEP = 0x1.0p-52;

    /** 64 random bits. */
    long bits(int draw, int variable) {
        int[] words = Philox.words(draw, variable, use.number(), 0, (int) seed, (int) (seed >>> 32));
        return ((long) words[0] << 32) | (words[1] & 0xFFFFFFFFL);
    }

    /** A number evenly spread between 0 and 1, never one of them. */
    double uniform(int draw, int variable) {
        return ((bits(draw, variable) >>> 12) + 0.5) * STEP;
    }

    /** A whole number from 0 to below a bound; to within bound / 2³² evenly spread. */
    int below(int bound, int draw, int variable) {
        return (int) ((bits(draw, variable) >>> 32) * bound >>> 32);
    }
}
