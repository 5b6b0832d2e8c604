package org.amberyard.workbench.work;

import java.util.concurrent.CancellationException;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import org.amberyard.core.progress.Progress;
import org.eclipse.core.runtime.IProgressMonitor;

/** Ends a job's work when its result is not wanted any more, and tells of work that takes longer than a moment. */
public final class JobProgress implements Progress {
    private static final long FIRST_TOLD_NANOS = TimeUnit.MILLISECONDS.toNanos(300);
    private static final long TOLD_AGAIN_NANOS = TimeUnit.MILLISECONDS.toNanos(100);

    private final Owner owner;
    private final BooleanSupplier wanted;
    private final DoubleConsumer told;
    private long dueNanos = System.nanoTime() + FIRST_TOLD_NANOS;

    /**
     * Progress of work that starts now.
     *
     * @param owner what the result is for; nothing is told once it is gone
     * @param wanted whether the result is still wanted, asked from any thread
     * @param told hears on the event thread what part of the work is done, as long as it is wanted
     */
    public JobProgress(Owner owner, BooleanSupplier wanted, DoubleConsumer told) {
        this.owner = owner;
        this.wanted = wanted;
        this.told = told;
    }

    /**
     * Goes on as long as a job is wanted; for work whose result is for no control.
     *
     * @throws CancellationException when the job was cancelled
     */
    public static void goOn(IProgressMonitor monitor) {
        if (monitor.isCanceled()) {
            throw new CancellationException();
        }
    }

    @Override
    public void at(double share) {
        if (owner.isGone() || !wanted.getAsBoolean()) {
            throw new CancellationException();
        }
        if (due()) {
            owner.tell(wanted, () -> told.accept(share));
        }
    }

    private synchronized boolean due() {
        long now = System.nanoTime();
        if (now - dueNanos < 0) {
            return false;
        }
        dueNanos = now + TOLD_AGAIN_NANOS;
        return true;
    }
}
