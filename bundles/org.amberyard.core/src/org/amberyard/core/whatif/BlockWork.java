package org.amberyard.core.whatif;

import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;

/** Works out blocks of draws on any thread; all of it stops when it is cancelled. */
final class BlockWork {
    private final int results;
    private final DrawEvaluation.Maker maker;
    private final AtomicInteger done;
    private volatile boolean cancelled;

    BlockWork(RunSettings settings, DrawEvaluation.Maker maker) {
        this.results = settings.results();
        this.maker = maker;
        this.done = new AtomicInteger(settings.firstDraw());
    }

    /** Number of draws that are done, whether or not their block is. */
    int drawsDone() {
        return done.get();
    }

    void cancel() {
        cancelled = true;
    }

    private void check() {
        if (cancelled) {
            throw new CancellationException();
        }
    }

    Block block(int first, int end) {
        DrawEvaluation evaluation = maker.make(this::check);
        double[][] columns = new double[results][end - first];
        double[] row = new double[results];
        for (int draw = first; draw < end; draw++) {
            check();
            evaluate(evaluation, draw, row);
            for (int result = 0; result < results; result++) {
                columns[result][draw - first] = row[result];
            }
            done.incrementAndGet();
        }
        return new Block(first, columns);
    }

    private static void evaluate(DrawEvaluation evaluation, int draw, double[] row) {
        try {
            evaluation.evaluate(draw, row);
        } catch (CancellationException e) {
            throw e;
        } catch (RuntimeException e) {
            throw new DrawFailedException(draw, e);
        }
    }
}
