package org.amberyard.workbench.measurements;

import java.util.function.BiConsumer;
import org.amberyard.core.consumption.FitSettings;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.study.CurveFitting;
import org.amberyard.study.CurveLogs;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;

/** Fits a curve off the event thread. */
final class FitJob extends Job {

    private final CurveLogs logs;
    private final FitSettings settings;
    private final Display display;
    private final BiConsumer<FitJob, CurveFitting> found;

    /** @param found is told by which fit what was found, on the event thread, also of one that ended just before it was cancelled */
    FitJob(CurveLogs logs, FitSettings settings, Display display, BiConsumer<FitJob, CurveFitting> found) {
        super(NLS.bind(Messages.Fit_job, ElementNames.of(logs.type())));
        this.logs = logs;
        this.settings = settings;
        this.display = display;
        this.found = found;
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        CurveFitting fitting = logs.fit(settings);
        if (monitor.isCanceled() || display.isDisposed()) {
            return Status.CANCEL_STATUS;
        }
        display.asyncExec(() -> found.accept(this, fitting));
        return Status.OK_STATUS;
    }
}
