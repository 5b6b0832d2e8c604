package org.amberyard.workbench.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.exchange.WhatIfFile;
import org.amberyard.model.study.Study;
import org.amberyard.study.whatif.SavedRun;
import org.amberyard.study.whatif.WhatIfRun;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/** Works a what-if out, or opens what is kept of one, off the event thread. */
final class WhatIfJob extends Job {

    /** What it works on: the study is a copy that nobody edits. */
    record Asked(Study study, StudyResult base, Optional<SavedRun> before, Optional<Path> file, boolean openOnly) {
    }

    /** Hears of results so far, on the thread of the job. */
    interface Listener {
        void found(WhatIfResults results);

        /** The job is over; with what is kept, or with why it failed. */
        void ended(Optional<SavedRun> kept, boolean complete, String failure);
    }

    private final Asked asked;
    private final Listener listener;
    private volatile double share;

    WhatIfJob(Asked asked, Listener listener) {
        super(Messages.WhatIf_job);
        this.asked = asked;
        this.listener = listener;
        setSystem(true);
    }

    /** What part of the work is done, 0 to 1. */
    double share() {
        return share;
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            WhatIfRun run = new WhatIfRun(asked.study(), asked.base(), Runtime.getRuntime().availableProcessors(), asked.before());
            if (!asked.openOnly()) {
                run.run(done -> at(done, monitor), listener::found);
            }
            listener.found(run.results());
            keep(run.saved());
            listener.ended(Optional.of(run.saved()), run.isComplete(), "");
        } catch (RuntimeException e) {
            // A draw may be beyond the method; the user must hear which and go on.
            ILog.of(WhatIfJob.class).error(e.getMessage(), e);
            listener.ended(Optional.empty(), false, e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage());
        }
        return Status.OK_STATUS;
    }

    private void at(double done, IProgressMonitor monitor) {
        share = done;
        if (monitor.isCanceled()) {
            throw new CancellationException();
        }
    }

    private void keep(SavedRun kept) {
        if (asked.openOnly() || asked.file().isEmpty()) {
            return;
        }
        Consumer<IOException> told = e -> ILog.of(WhatIfJob.class).warn(e.getMessage(), e);
        write(kept, asked.file().get(), told);
    }

    /** Writes a run beside a study's file. */
    static void write(SavedRun kept, Path study, Consumer<IOException> failed) {
        try {
            WhatIfFile.write(kept, WhatIfFile.beside(study));
        } catch (IOException e) {
            failed.accept(e);
        }
    }
}
