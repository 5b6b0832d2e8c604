package org.amberyard.batch;

import java.io.IOException;
import org.amberyard.core.whatif.OwnThreads;

/** Runs what a verb does on so many threads and no more, also where it works in parallel. */
final class ThreadLimit {
    private ThreadLimit() {
    }

    /** What a verb does. */
    interface Work {
        int run() throws WrongUse, IOException;
    }

    static int run(int threads, Work work) throws WrongUse, IOException {
        try {
            return OwnThreads.run(threads, work::run);
        } catch (WrongUse | IOException | RuntimeException e) {
            throw e;
        } catch (Exception e) {
            throw new IllegalStateException("Work throws nothing else", e);
        }
    }
}
