package org.amberyard.workbench.views;

import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Function;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.report.ResultTable;
import org.amberyard.report.ResultTables;
import org.amberyard.workbench.work.JobProgress;
import org.amberyard.workbench.work.Owner;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Control;

/**
 * Makes tables of results in the background; of several requests only the last counts. Used on the event thread, on which it also
 * answers.
 */
public final class TableWork extends Job {

    /** Hears what becomes of the table that was asked for last. */
    public interface Listener {
        /** A part of the work, 0 to 1, is done; not told of a table that is made in a moment. */
        void at(double share);

        /** The table. */
        void done(ResultTable table);

        /** It could not be made. */
        void failed(String why);
    }

    private record Request(Function<Progress, ResultTable> maker) {
    }

    private final Owner owner;
    private final Listener listener;
    private volatile Request wanted;

    /** Work for a control, with which it ends. */
    public TableWork(Control owner, Listener listener) {
        super(Messages.Results_making);
        this.owner = new Owner(owner);
        this.listener = listener;
        setSystem(true);
    }

    /** Makes a table by its place among the tables. */
    void make(int place, StudyResult result, UnitSystem units) {
        make(progress -> ResultTables.of(place, result, units, progress));
    }

    /** Makes a table that tells a progress how far it has come. */
    public void make(Function<Progress, ResultTable> maker) {
        wanted = new Request(maker);
        schedule();
    }

    /** Nothing is wanted any more. */
    public void stop() {
        wanted = null;
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        Request request = wanted;
        if (request == null) {
            return Status.CANCEL_STATUS;
        }
        try {
            ResultTable table = request.maker().apply(
                    new JobProgress(owner, () -> request == wanted, listener::at));
            answer(request, l -> l.done(table));
        } catch (CancellationException e) {
            return Status.CANCEL_STATUS;
        } catch (RuntimeException e) {
            // One table that cannot be made must not take the window down.
            ILog.of(TableWork.class).error(e.getMessage(), e);
            answer(request, l -> l.failed(e.getMessage()));
        }
        return Status.OK_STATUS;
    }

    private void answer(Request request, Consumer<Listener> what) {
        owner.tell(() -> request == wanted, () -> what.accept(listener));
    }
}
