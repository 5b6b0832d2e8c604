package org.amberyard.core.progress;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiFunction;

/** Does many pieces of work at the same time and tells how many of them are done. */
public final class Steps {
    private Steps() {
    }

    /**
     * Results of a piece of work for each item, in the order of the items.
     *
     * @param work a piece of work; one that takes long runs what it is given now and then, so that it can be stopped
     * @throws CancellationException when the progress throws it
     */
    public static <I, R> List<R> of(List<I> items, BiFunction<I, Runnable, R> work, Progress progress) {
        AtomicInteger done = new AtomicInteger();
        Runnable check = () -> progress.at((double) done.get() / items.size());
        return items.parallelStream().map(item -> {
            check.run();
            R result = work.apply(item, check);
            done.incrementAndGet();
            check.run();
            return result;
        }).toList();
    }
}
