package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ReadingProgress;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;

/** Reads a file in the background; what was cancelled has no outcome. */
public abstract class FileReading<T> extends Job {

    private final Path file;
    private T imported;
    private ImportException refusal;
    private volatile ReadingProgress progress = ReadingProgress.NONE;

    /** Will read a file. */
    protected FileReading(Path file) {
        super(NLS.bind(Messages.Import_reading, file.getFileName()));
        this.file = file;
    }

    /**
     * Reads the file.
     *
     * @throws ImportException when it is not understood
     * @throws CancellationException when it is no longer wanted
     */
    protected abstract T read(Path path) throws ImportException;

    @Override
    protected final IStatus run(IProgressMonitor monitor) {
        monitor.beginTask(getName(), IProgressMonitor.UNKNOWN);
        progress = new MonitorProgress(monitor);
        try {
            imported = read(file);
        } catch (ImportException e) {
            refusal = e;
        } catch (CancellationException e) {
            return Status.CANCEL_STATUS;
        } finally {
            monitor.done();
        }
        return monitor.isCanceled() ? Status.CANCEL_STATUS : Status.OK_STATUS;
    }

    /** To be told how far the reading has come; knows when it was cancelled. */
    protected final ReadingProgress progress() {
        return progress;
    }

    /**
     * Reads in the background, behind a dialog that can stop it when it takes longer than a moment; then tells on the thread of a shell,
     * unless it was stopped or the shell is gone.
     */
    final void readThen(Shell shell, Runnable tell) {
        addJobChangeListener(new JobChangeAdapter() {
            @Override
            public void done(IJobChangeEvent event) {
                if (event.getResult().isOK() && !shell.isDisposed()) {
                    shell.getDisplay().asyncExec(tell);
                }
            }
        });
        schedule();
        PlatformUI.getWorkbench().getProgressService().showInDialog(shell, this);
    }

    /** What the file holds, once it has been read. */
    public final Optional<T> imported() {
        return Optional.ofNullable(imported);
    }

    /** Why the file was refused. */
    public final Optional<ImportException> refusal() {
        return Optional.ofNullable(refusal);
    }
}
