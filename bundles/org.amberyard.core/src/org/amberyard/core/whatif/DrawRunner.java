package org.amberyard.core.whatif;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.whatif.RunEnd.Reason;

/**
 * Works out draws in blocks on several threads and hands the blocks on in the order of the draws. Which draws are
 * handed on, and their bits, do not depend on the number of threads, except for how far a cancelled run comes. Few
 * blocks wait at a time, so that memory does not grow with the number of draws. What a draw does in parallel stays on these threads.
 */
public final class DrawRunner {
    private static final int LISTEN_MS = 50;
    private static final int BLOCKS_PER_THREAD = 3;

    private final RunSettings settings;
    private final BlockWork work;
    private final BlockSink sink;
    private final Progress progress;
    private final Deque<Future<Attempt<Block>>> waiting = new ArrayDeque<>();
    private int started;
    private int handedOn;

    private DrawRunner(RunSettings settings, BlockWork work, BlockSink sink, Progress progress) {
        this.settings = settings;
        this.work = work;
        this.sink = sink;
        this.progress = progress;
        this.started = settings.firstDraw();
        this.handedOn = settings.firstDraw();
    }

    /**
     * Runs draws until all are done, the sink has enough, or the progress throws a {@link CancellationException}; what
     * was handed on until then stays good, and a later run may begin where this one ended. Returns when no draw is
     * being worked on any more.
     *
     * @param maker makes evaluations of draws
     * @param sink takes blocks on the calling thread
     * @param progress told on the calling thread, several times a second
     * @throws DrawFailedException when a draw cannot be evaluated; the draws before its block were handed on
     */
    public static RunEnd run(RunSettings settings, DrawEvaluation.Maker maker, BlockSink sink, Progress progress) {
        return new DrawRunner(settings, new BlockWork(settings, maker), sink, progress).run();
    }

    private RunEnd run() {
        ExecutorService threads = OwnThreads.of(settings.threads(), "draws");
        try {
            Reason reason = end(threads);
            return new RunEnd(handedOn, reason);
        } finally {
            work.cancel();
            threads.shutdownNow();
            awaitEnd(threads);
        }
    }

    private Reason end(ExecutorService threads) {
        try {
            while (handedOn < settings.draws()) {
                startBlocks(threads);
                Block block = next();
                handedOn = block.endDraw();
                if (sink.take(block)) {
                    return Reason.ENOUGH;
                }
                tell();
            }
            return Reason.COMPLETE;
        } catch (CancellationException e) {
            return Reason.CANCELLED;
        }
    }

    private void startBlocks(ExecutorService threads) {
        while (started < settings.draws() && waiting.size() < BLOCKS_PER_THREAD * settings.threads()) {
            int first = started;
            int end = (int) Math.min(settings.draws(), (long) first + settings.blockDraws());
            waiting.add(threads.submit(() -> Attempt.of(() -> work.block(first, end))));
            started = end;
        }
    }

    private Block next() {
        Future<Attempt<Block>> first = waiting.remove();
        while (true) {
            try {
                return first.get(LISTEN_MS, TimeUnit.MILLISECONDS).get();
            } catch (TimeoutException e) {
                tell();
            } catch (ExecutionException e) {
                throw new IllegalStateException(e.getCause());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new CancellationException();
            }
        }
    }

    private void tell() {
        progress.at((double) work.drawsDone() / settings.draws());
    }

    private static void awaitEnd(ExecutorService threads) {
        boolean interrupted = false;
        while (!threads.isTerminated()) {
            try {
                threads.awaitTermination(1, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
