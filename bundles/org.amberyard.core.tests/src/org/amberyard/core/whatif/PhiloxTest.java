package org.amberyard.core.whatif;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PhiloxTest {

    /**
     * Known answers of philox4x32 with 10 rounds: Random123 of D. E. Shaw Research, tests/kat_vectors, lines
     * "philox4x32 10" (counter, key, answer), read in copies that agree with each other.
     */
    @Test
    void knownAnswers() {
        assertArrayEquals(new int[] {0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8}, Philox.words(0, 0, 0, 0, 0, 0));
        assertArrayEquals(new int[] {0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd},
                Philox.words(-1, -1, -1, -1, -1, -1));
        assertArrayEquals(new int[] {0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1},
                Philox.words(0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344, 0xa4093822, 0x299f31d0));
    }

    @Test
    void seedUseDrawAndVariableAllCount() {
        double here = new CounterRandom(1, RandomUse.DRAW).uniform(2, 3);
        assertEquals(here, new CounterRandom(1, RandomUse.DRAW).uniform(2, 3), 0);
        assertNotEquals(here, new CounterRandom(1L << 40, RandomUse.DRAW).uniform(2, 3));
        assertNotEquals(here, new CounterRandom(1, RandomUse.RESAMPLE).uniform(2, 3));
        assertNotEquals(here, new CounterRandom(1, RandomUse.DRAW).uniform(3, 2));
    }

    @Test
    void numbersAreEvenlySpread() {
        CounterRandom random = new CounterRandom(20260101, RandomUse.DRAW);
        int[] cells = new int[10];
        for (int draw = 0; draw < 100_000; draw++) {
            double number = random.uniform(draw, 0);
            assertTrue(number > 0 && number < 1);
            cells[(int) (number * 10)]++;
            int whole = random.below(7, draw, 1);
            assertTrue(whole >= 0 && whole < 7);
        }
        double squares = 0;
        for (int cell : cells) {
            squares += (cell - 10_000.0) * (cell - 10_000.0) / 10_000;
        }
        assertTrue(squares < 27.9, "chi square of 9 degrees of freedom exceeds 27.9 once in 1000: " + squares);
    }
}
