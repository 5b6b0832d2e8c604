package org.amberyard.core.whatif;

/** Works out the results of draws, one after the other, on one thread. */
@FunctionalInterface
public interface DrawEvaluation {

    /**
     * Works out a draw. The results are a function of its number alone.
     *
     * @param draw number of the draw from 0
     * @param results takes the results, a place for each
     */
    void evaluate(int draw, double[] results);

    /**
     * Makes evaluations, one for each block of draws, so that each has its own working memory. May be called from
     * several threads.
     */
    @FunctionalInterface
    interface Maker {
        /**
         * An evaluation.
         *
         * @param check run now and then by an evaluation whose draws take long; throws a
         *            {@link java.util.concurrent.CancellationException} when the draws are not wanted any more
         */
        DrawEvaluation make(Runnable check);
    }
}
