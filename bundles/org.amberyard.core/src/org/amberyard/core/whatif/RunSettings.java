package org.amberyard.core.whatif;

import org.amberyard.core.math.Checks;

/**
 * What a run does.
 *
 * @param firstDraw draw to begin with: 0, or where a run ended that is gone on with
 * @param draws number of draws of the whole run, those before the first one included
 * @param blockDraws draws of a block
 * @param results number of results of a draw
 * @param threads threads that work at the same time; results do not depend on it
 */
public record RunSettings(int firstDraw, int draws, int blockDraws, int results, int threads) {

    public RunSettings {
        Checks.atLeast("Draws of a block", blockDraws, 1);
        Checks.atLeast("Number of draws", draws, 1);
        Checks.within("First draw", firstDraw, 0, draws);
        Checks.atLeast("Number of results", results, 1);
        Checks.atLeast("Number of threads", threads, 1);
        if (firstDraw % blockDraws != 0 && firstDraw != draws) {
            throw new IllegalArgumentException("First draw is " + firstDraw + " but must be the first of a block of "
                    + blockDraws);
        }
    }

    /** A whole run on as many threads as the machine has processors. */
    public static RunSettings of(int draws, int blockDraws, int results) {
        return new RunSettings(0, draws, blockDraws, results, Runtime.getRuntime().availableProcessors());
    }

    /** The same run, gone on with from a draw. */
    public RunSettings from(int draw) {
        return new RunSettings(draw, draws, blockDraws, results, threads);
    }

    /** The same run on another number of threads. */
    public RunSettings on(int otherThreads) {
        return new RunSettings(firstDraw, draws, blockDraws, results, otherThreads);
    }
}
