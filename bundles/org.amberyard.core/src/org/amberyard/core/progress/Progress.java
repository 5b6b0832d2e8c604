package org.amberyard.core.progress;

import java.util.concurrent.CancellationException;

/**
 * Hears how far a long computation has come, and stops it when nobody wants its result any more. A computation may tell from
 * several threads.
 */
@FunctionalInterface
public interface Progress {

    /** Nobody listens, and the result is wanted. */
    Progress NONE = share -> {};

    /**
     * Tells how far the computation has come.
     *
     * @param share part of it that is done, 0 to 1
     * @throws CancellationException when the result is not wanted any more
     */
    void at(double share);

    /** Progress of one of several parts that take about as long as each other, the first being part 0. */
    default Progress part(int part, int parts) {
        return share -> at((part + share) / parts);
    }
}
