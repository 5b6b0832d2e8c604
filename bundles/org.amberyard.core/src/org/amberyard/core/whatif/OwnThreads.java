package org.amberyard.core.whatif;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinWorkerThread;
import java.util.concurrent.atomic.AtomicInteger;

/** Threads for some work alone. What the work does in parallel stays on them, so that their number is the most that is busy. */
public final class OwnThreads {
    private OwnThreads() {
    }

    static ForkJoinPool of(int threads, String name) {
        ClassLoader loader = Thread.currentThread().getContextClassLoader();
        AtomicInteger number = new AtomicInteger();
        return new ForkJoinPool(threads, pool -> {
            ForkJoinWorkerThread thread = ForkJoinPool.defaultForkJoinWorkerThreadFactory.newThread(pool);
            thread.setName(name + "-" + number.incrementAndGet());
            thread.setContextClassLoader(loader);
            return thread;
        }, null, false);
    }

    /**
     * Works on so many threads and no more, and waits for the end.
     *
     * @throws Exception what the work throws
     */
    public static <T> T run(int threads, Callable<T> work) throws Exception {
        ForkJoinPool pool = of(threads, "work");
        try {
            Attempt<T> attempt = pool.submit(() -> Attempt.of(work)).get();
            if (attempt.failure() instanceof Exception exception) {
                throw exception;
            }
            return attempt.get();
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        } finally {
            pool.shutdown();
        }
    }
}
