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
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.amberyard.study.whatif.SavedRun;
import org.amberyard.study.whatif.StudyFingerprint;
import org.amberyard.study.whatif.WhatIfRun;
import org.amberyard.workbench.work.Failure;
import org.amberyard.workbench.work.JobProgress;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;

/** Works a what-if out, or opens what is kept of one, off the event thread. */
final class WhatIfJob extends Job {

    /**
     * What it works on: the study is a copy that nobody edits, its results are worked out where they are not known; what is kept of
     * another state of it is left aside.
     */
    record Asked(Study study, Optional<StudyResult> base, Optional<SavedRun> before, Optional<Path> file, boolean openOnly) {
    }

    /** Hears of results so far, on the thread of the job. */
    interface Listener {
        void found(WhatIfResults results, String fingerprint);

        /** The job is over, however it ended and even if it never began. */
        void ended(Outcome outcome);
    }

    /** What is kept, whether it is all, and why it failed; blank where it did not. */
    record Outcome(Optional<SavedRun> kept, boolean complete, String failure) {
    }

    private final Asked asked;
    private final Listener listener;
    private volatile double share;
    private volatile Outcome outcome = new Outcome(Optional.empty(), false, "");

    WhatIfJob(Asked asked, Listener listener) {
        super(Messages.WhatIf_job);
        this.asked = asked;
        this.listener = listener;
        setSystem(true);
        addJobChangeListener(new JobChangeAdapter() {
            @Override
            public void done(IJobChangeEvent event) {
                listener.ended(event.getResult().matches(IStatus.ERROR)
                        ? new Outcome(Optional.empty(), false, event.getResult().getMessage()) : outcome);
            }
        });
    }

    /** What part of the work is done, 0 to 1. */
    double share() {
        return share;
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        Optional<WhatIfRun> begun = Optional.empty();
        String failure = "";
        try {
            String fingerprint = StudyFingerprint.of(asked.study());
            StudyResult base = asked.base().orElseGet(() -> new StudyEvaluator().evaluate(StudyCompiler.compile(asked.study()),
                    done -> at(0, monitor)));
            WhatIfRun run = new WhatIfRun(asked.study(), base, Runtime.getRuntime().availableProcessors(), asked.before());
            begun = Optional.of(run);
            if (!asked.openOnly()) {
                run.run(done -> at(done, monitor), results -> listener.found(results, fingerprint));
            }
            listener.found(run.results(), fingerprint);
        } catch (CancellationException e) {
            // Stopped before its base was known: there is nothing to keep.
            return Status.CANCEL_STATUS;
        } catch (RuntimeException | OutOfMemoryError e) {
            // A draw may be beyond the method or the memory; the user must hear which and go on.
            ILog.of(WhatIfJob.class).error(e.getMessage(), e);
            failure = Failure.words(e);
        }
        outcome = new Outcome(begun.map(this::kept), begun.filter(WhatIfRun::isComplete).isPresent(), failure);
        return Status.OK_STATUS;
    }

    /** What a run has found, failed or not, written beside the study. */
    private SavedRun kept(WhatIfRun run) {
        SavedRun kept = run.saved();
        keep(kept);
        return kept;
    }

    private void at(double done, IProgressMonitor monitor) {
        share = done;
        JobProgress.goOn(monitor);
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
