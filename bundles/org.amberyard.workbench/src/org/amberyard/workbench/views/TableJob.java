package org.amberyard.workbench.views;

import java.util.function.Consumer;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.report.ResultTable;
import org.amberyard.report.ResultTables;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

/** Makes a table of results beside the window, because some take seconds. */
final class TableJob extends Job {
    /** Most that the window waits for a table that is made at once. */
    private static final int BRIEFLY_MS = 40;

    private final int place;
    private final StudyResult result;
    private final UnitSystem units;
    private final Consumer<TableJob> whenDone;
    private final Display display = Display.getCurrent();
    private volatile ResultTable table;

    TableJob(int place, StudyResult result, UnitSystem units, Consumer<TableJob> whenDone) {
        super(Messages.Results_computing);
        this.place = place;
        this.result = result;
        this.units = units;
        this.whenDone = whenDone;
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        table = ResultTables.of(place, result, units);
        if (!display.isDisposed()) {
            display.asyncExec(() -> whenDone.accept(this));
        }
        return Status.OK_STATUS;
    }

    /** Waits on the event thread for a table that is made at once, and takes it; a longer one comes by itself. */
    void joinBriefly() {
        try {
            if (join(BRIEFLY_MS, null)) {
                whenDone.accept(this);
            }
        } catch (OperationCanceledException e) {
            // It comes by itself.
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    int place() {
        return place;
    }

    StudyResult result() {
        return result;
    }

    UnitSystem units() {
        return units;
    }

    ResultTable table() {
        return table;
    }
}
