package org.amberyard.core.whatif;

/**
 * A random order of the numbers from 0 to below a size, of which each place is worked out by itself and nothing is
 * stored: a Feistel network over the next larger power of four, walked again while it leads outside (Black and Rogaway,
 * "Ciphers with arbitrary finite domains", CT-RSA 2002, from memory).
 */
final class Shuffle {
    private static final int ROUNDS = 8;

    private final int size;
    private final int halfBits;
    private final int[] keys = new int[ROUNDS];

    /**
     * An order.
     *
     * @param random source of its keys
     * @param number number of the order under that source
     */
    Shuffle(int size, CounterRandom random, int number) {
        this.size = size;
        this.halfBits = Math.max(1, (33 - Integer.numberOfLeadingZeros(size - 1)) / 2);
        for (int round = 0; round < ROUNDS; round++) {
            keys[round] = (int) random.bits(round, number);
        }
    }

    /** The number at a place of the order. */
    int at(int place) {
        long walked = network(place);
        while (walked >= size) {
            walked = network(walked);
        }
        return (int) walked;
    }

    private long network(long value) {
        int mask = (1 << halfBits) - 1;
        int left = (int) (value >>> halfBits);
        int right = (int) value & mask;
        for (int key : keys) {
            int next = left ^ (mixed(right ^ key) & mask);
            left = right;
            right = next;
        }
        return ((long) left << halfBits) | right;
    }

    /** Last steps of MurmurHash3 for 32 bits (Appleby, public domain; from memory): each bit depends on every other. */
    private static int mixed(int word) {
        int x = word;
        x = (x ^ (x >>> 16)) * 0x85ebca6b;
        x = (x ^ (x >>> 13)) * 0xc2b2ae35;
        return x ^ (x >>> 16);
    }
}
