package org.amberyard.workbench.sheets;

import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.exchange.sheet.SheetImport;
import org.amberyard.model.study.Study;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

/** Finds out in the background what an import would do; only what was asked last is told. */
final class PreviewJob extends Job {
    private static final long PAUSE_MS = 120;

    private final Study study;
    private final Display display;
    private final Consumer<SheetImport.Preview> tell;
    private volatile SheetImport asked;

    /** @param tell hears of the outcome on the thread of the display */
    PreviewJob(Study study, Display display, Consumer<SheetImport.Preview> tell) {
        super(Messages.Table_preview);
        this.study = study;
        this.display = display;
        this.tell = tell;
        setSystem(true);
    }

    void ask(SheetImport made) {
        asked = made;
        cancel();
        schedule(PAUSE_MS);
    }

    /** Stops when the monitor is cancelled, as it is when something else is asked or the dialog is closed. */
    private record Asked(IProgressMonitor monitor) implements ReadingProgress {

        @Override
        public void reached(String file, long rows) {
            // The dialog says that it is looking.
        }

        @Override
        public boolean isStopped() {
            return monitor.isCanceled();
        }
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        SheetImport of = asked;
        SheetImport.Preview preview;
        try {
            preview = of.preview(study, new Asked(monitor));
        } catch (CancellationException e) {
            return Status.CANCEL_STATUS;
        }
        if (!display.isDisposed()) {
            display.asyncExec(() -> {
                if (of == asked) {
                    tell.accept(preview);
                }
            });
        }
        return Status.OK_STATUS;
    }
}
