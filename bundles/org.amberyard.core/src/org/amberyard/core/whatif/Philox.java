package org.amberyard.core.whatif;

/**
 * Random bits that are a function of a counter and a key and of nothing else, so that any of them can be had at any
 * time on any thread: Philox4x32 with ten rounds, of Salmon, Moraes, Dror and Shaw, "Parallel random numbers: as easy
 * as 1, 2, 3", Proceedings of SC11 (2011).
 */
final class Philox {
    private static final int ROUNDS = 10;
    private static final long FIRST_FACTOR = 0xD2511F53L;
    private static final long SECOND_FACTOR = 0xCD9E8D57L;
    private static final int FIRST_KEY_STEP = 0x9E3779B9;
    private static final int SECOND_KEY_STEP = 0xBB67AE85;
    private static final long LOW_WORD = 0xFFFFFFFFL;

    private Philox() {
    }

    /** The four words of a counter, given as four words, under a key of two words. */
    static int[] words(int c0, int c1, int c2, int c3, int key0, int key1) {
        int a = c0;
        int b = c1;
        int c = c2;
        int d = c3;
        for (int round = 0; round < ROUNDS; round++) {
            long first = FIRST_FACTOR * (a & LOW_WORD);
            long second = SECOND_FACTOR * (c & LOW_WORD);
            a = (int) (second >>> 32) ^ b ^ (key0 + round * FIRST_KEY_STEP);
            b = (int) second;
            c = (int) (first >>> 32) ^ d ^ (key1 + round * SECOND_KEY_STEP);
            d = (int) first;
        }
        return new int[] {a, b, c, d};
    }
}
