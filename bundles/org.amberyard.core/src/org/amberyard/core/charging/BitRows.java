package org.amberyard.core.charging;

/** Rows of bits in one array, each of whole words. */
final class BitRows {
    /** A word holds two to this power of bits. */
    static final int WORD = 6;

    private BitRows() {
    }

    /** Words that hold so many bits. */
    static int words(int bits) {
        return bits + (1 << WORD) - 1 >> WORD;
    }

    /** True when a bit of the row that starts at a word is set. */
    static boolean has(long[] words, int start, int bit) {
        return (words[start + (bit >> WORD)] >> bit & 1) != 0;
    }

    /** Sets or clears a bit of the row that starts at a word. */
    static void set(long[] words, int start, int bit, boolean value) {
        if (value) {
            words[start + (bit >> WORD)] |= 1L << bit;
        } else {
            words[start + (bit >> WORD)] &= ~(1L << bit);
        }
    }

    /** Sum of the amounts, from a start on, whose bits are set in one word of a row. */
    static double sum(long bits, int word, double[] amounts, int start) {
        double sum = 0;
        for (long rest = bits; rest != 0; rest &= rest - 1) {
            sum += amounts[start + (word << WORD) + Long.numberOfTrailingZeros(rest)];
        }
        return sum;
    }
}
