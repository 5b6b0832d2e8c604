package org.amberyard.core.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Runs of draws with a mean of 0 and a deviation of 1, in eight samples, that end when they are enough. */
class StandardErrorRuleTest {
    private static final double WANTED = 0.04;
    private static final int BLOCK = 16;
    private static final int LEAST = 200;
    private static final int RUNS = 1000;
    private static final double DEVIATIONS = 1.96;

    private static StandardErrorRule rule(double wanted) {
        return new StandardErrorRule(block -> block.columns()[0], wanted, LEAST, 8);
    }

    private static Block block(int first, Random random) {
        return new Block(first, new double[][] {IntStream.range(0, BLOCK).mapToDouble(i -> random.nextGaussian()).toArray()});
    }

    private static StandardErrorRule ended(long seed) {
        Random random = new Random(seed);
        StandardErrorRule rule = rule(WANTED);
        int draws = 0;
        while (!rule.take(block(draws, random))) {
            draws += BLOCK;
        }
        return rule;
    }

    /** At the end the mean lies within 1.96 of the error that was waited for in 95 % of runs or more, of the stated one in 91 %. */
    @Test
    void theMeanIsKnownAsCloselyAsWasWaitedFor() {
        int wanted = 0;
        int stated = 0;
        for (int seed = 0; seed < RUNS; seed++) {
            StandardErrorRule rule = ended(seed);
            wanted += Math.abs(rule.mean()) <= DEVIATIONS * WANTED ? 1 : 0;
            stated += Math.abs(rule.mean()) <= DEVIATIONS * rule.standardError() ? 1 : 0;
        }
        assertTrue(wanted >= 0.96 * RUNS && wanted < RUNS, wanted + " of " + RUNS);
        assertTrue(stated >= 0.905 * RUNS, stated + " of " + RUNS);
    }

    /** Never before 200 draws, then at 208 and at the first block behind 400, 800 and so on. */
    @Test
    void itAsksWhenDrawsHaveDoubled() {
        Random random = new Random(1);
        StandardErrorRule rule = rule(1e9);
        int[] enough = IntStream.range(0, 60).filter(i -> rule.take(block(BLOCK * i, random))).map(i -> BLOCK * (i + 1)).toArray();
        assertEquals("208, 400, 800", String.join(", ", IntStream.of(enough).mapToObj(String::valueOf).toList()));
        assertThrows(IllegalArgumentException.class, () -> new StandardErrorRule(block -> block.columns()[0], 1, 0, 8));
    }
}
