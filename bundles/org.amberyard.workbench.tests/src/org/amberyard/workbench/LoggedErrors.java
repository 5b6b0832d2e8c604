package org.amberyard.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.eclipse.core.runtime.ILogListener;
import org.eclipse.core.runtime.IStatus;

/** Errors that the program logs, of whatever thread; exceptions that nobody catches on the event thread are logged too. */
final class LoggedErrors implements ILogListener {

    private final Queue<IStatus> errors = new ConcurrentLinkedQueue<>();

    @Override
    public void logging(IStatus status, String plugin) {
        if (status.matches(IStatus.ERROR)) {
            errors.add(status);
        }
    }

    /** The errors logged since they were last taken; a test that takes them expects them. */
    List<IStatus> take() {
        List<IStatus> taken = new ArrayList<>();
        for (IStatus next = errors.poll(); next != null; next = errors.poll()) {
            taken.add(next);
        }
        return taken;
    }

    /** Fails when errors have been logged that no test has taken. */
    void failIfAny() {
        List<IStatus> found = take();
        if (!found.isEmpty()) {
            AssertionError failure = new AssertionError("The program has logged an error: " + found.get(0).getMessage());
            addTo(failure, found);
            throw failure;
        }
    }

    /** Adds what has been logged to a failure, for which it may be the cause. */
    void addTo(Throwable failure) {
        addTo(failure, take());
    }

    private static void addTo(Throwable failure, List<IStatus> found) {
        for (IStatus error : found) {
            failure.addSuppressed(error.getException() == null ? new AssertionError(error.toString()) : error.getException());
        }
    }
}
