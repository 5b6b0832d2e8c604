package org.amberyard.workbench.handlers;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.workbench.editor.StudyEditor;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;

/** Reads something in the background; what was cancelled has no outcome. */
public abstract class Reading<T> extends Job {

    private T imported;
    private ImportException refusal;
    private volatile ReadingProgress progress = ReadingProgress.NONE;

    /** Will read what has a name. */
    Reading(String name) {
        super(NLS.bind(Messages.Import_reading, name));
    }

    /**
     * Reads it.
     *
     * @throws ImportException when it is not understood
     * @throws CancellationException when it is no longer wanted
     */
    abstract T read() throws ImportException;

    @Override
    protected final IStatus run(IProgressMonitor monitor) {
        monitor.beginTask(getName(), IProgressMonitor.UNKNOWN);
        progress = new MonitorProgress(monitor);
        try {
            imported = read();
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

    /**
     * Reads in the background, then goes on with what was read, or says why it was refused; nothing more where the study was closed while it
     * was read.
     *
     * @param failed title when it was refused
     */
    final void readThen(StudyEditor editor, String failed, Consumer<T> then) {
        Shell shell = editor.getSite().getShell();
        readThen(shell, () -> {
            if (editor.getSite().getPage().findEditor(editor.getEditorInput()) == editor) {
                refusal().ifPresent(e -> MessageDialog.openError(shell, failed, Problems.of(e)));
                imported().ifPresent(then);
            }
        });
    }

    /** What was read, once it has been. */
    public final Optional<T> imported() {
        return Optional.ofNullable(imported);
    }

    /** Why it was refused. */
    public final Optional<ImportException> refusal() {
        return Optional.ofNullable(refusal);
    }
}
