package org.amberyard.workbench.sheets;

import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Function;
import org.amberyard.exchange.ReadingProgress;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

/** What a dialog wants found out in the background; only what was asked last is told, and what was asked before stops. */
final class LatestWork extends Job {
    private static final long PAUSE_MS = 120;

    private final Display display;
    private volatile Asked<?> asked;
    private volatile long rows;

    LatestWork(Display display) {
        super(Messages.Table_preview);
        this.display = display;
        setSystem(true);
    }

    /**
     * Something that was asked.
     *
     * @param work finds it out, in the background
     * @param tell hears of it on the thread of the display
     */
    private record Asked<T>(Function<ReadingProgress, T> work, Consumer<T> tell) {

        Runnable done(ReadingProgress progress) {
            T found = work.apply(progress);
            return () -> tell.accept(found);
        }
    }

    /** Asks for something instead of what was asked before. */
    <T> void ask(Function<ReadingProgress, T> work, Consumer<T> tell) {
        asked = new Asked<>(work, tell);
        rows = 0;
        cancel();
        schedule(PAUSE_MS);
    }

    /** Rows that have been gone through. */
    long rows() {
        return rows;
    }

    /** Stops when the monitor is cancelled, as it is when something else is asked or the dialog is closed. */
    private ReadingProgress progress(IProgressMonitor monitor) {
        return new ReadingProgress() {
            @Override
            public void reached(String file, long row) {
                rows = row;
            }

            @Override
            public boolean isStopped() {
                return monitor.isCanceled();
            }
        };
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        Asked<?> now = asked;
        Runnable tell;
        try {
            tell = now.done(progress(monitor));
        } catch (CancellationException e) {
            return Status.CANCEL_STATUS;
        }
        if (!display.isDisposed()) {
            display.asyncExec(() -> {
                if (now == asked) {
                    tell.run();
                }
            });
        }
        return Status.OK_STATUS;
    }
}
