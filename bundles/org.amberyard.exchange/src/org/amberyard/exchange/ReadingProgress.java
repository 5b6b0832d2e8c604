package org.amberyard.exchange;

import java.util.concurrent.CancellationException;

/** Told how far the reading of a large file has come, and asked whether it should go on. */
public interface ReadingProgress {
    /** Tells nobody and is never stopped. */
    ReadingProgress NONE = new ReadingProgress() {
        @Override
        public void reached(String file, long rows) {
            // Nobody listens.
        }

        @Override
        public boolean isStopped() {
            return false;
        }
    };

    /** So many rows of a file have been read. */
    void reached(String file, long rows);

    /** True when the reading is no longer wanted. */
    boolean isStopped();

    /**
     * Tells of rows that have been read.
     *
     * @throws CancellationException when the reading is no longer wanted
     */
    default void step(String file, long rows) {
        if (isStopped()) {
            throw new CancellationException("Stopped at row " + rows + " of " + file);
        }
        reached(file, rows);
    }
}
