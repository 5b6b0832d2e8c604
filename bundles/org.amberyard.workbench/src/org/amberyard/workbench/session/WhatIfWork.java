package org.amberyard.workbench.session;

import java.nio.file.Path;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.model.study.Study;
import org.amberyard.study.whatif.SavedRun;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.widgets.Display;

/** The what-if of a study that is open: run in the background, stopped, gone on with, kept beside the study's file. Used on the event thread. */
public final class WhatIfWork {
    private static final double NANOS_PER_S = 1e9;
    /** Too little is done to tell how long the rest takes. */
    private static final double LEAST_SHARE = 0.01;

    /** Where it stands. */
    public enum Phase {
        /** It was never run. */
        NONE,
        /** It runs. */
        RUNNING,
        /** It was stopped; what was done is kept. */
        STOPPED,
        /** It is done. */
        DONE,
        /** A run was kept for another state of the study. */
        OUTDATED_FILE,
        /** It cannot be run. */
        FAILED
    }

    private final StudySession session;
    private final Display display;
    private Phase phase = Phase.NONE;
    private String failure = "";
    private Optional<WhatIfResults> results = Optional.empty();
    private Optional<SavedRun> kept = Optional.empty();
    private String fingerprint = "";
    private String present = "";
    private int presentRevision = -1;
    private WhatIfJob job;
    private long startedNanos;
    private boolean looked;

    WhatIfWork(StudySession session, Display display) {
        this.session = session;
        this.display = display;
    }

    /** Where it stands. */
    public Phase phase() {
        return phase;
    }

    /** Why it failed; blank where it did not. */
    public String failure() {
        return failure;
    }

    /** What it has found so far. */
    public Optional<WhatIfResults> results() {
        return results;
    }

    /** What it has found, where that is of the study as it is. */
    public Optional<WhatIfResults> upToDate() {
        return results.filter(r -> !isOutdated());
    }

    /** What part of the run is done, 0 to 1. */
    public double share() {
        return job == null ? 0 : job.share();
    }

    /** Time that the run may still take, seconds; not a number while it cannot be told. */
    public double secondsLeft() {
        double share = share();
        return share < LEAST_SHARE ? Double.NaN : (System.nanoTime() - startedNanos) / NANOS_PER_S * (1 - share) / share;
    }

    /** True when the results are those of an earlier state of the study. */
    public boolean isOutdated() {
        return results.isPresent() && !(presentRevision == session.revision() && fingerprint.equals(present));
    }

    /** True when it can be run: there are results and uncertain inputs. */
    public boolean canRun() {
        return phase != Phase.RUNNING && session.evaluation().current().isPresent() && session.study().getWhatIf() != null
                && !session.study().getWhatIf().getInputs().isEmpty();
    }

    /** Runs it, or goes on where it was stopped as long as the study is the same. */
    public void run() {
        if (canRun()) {
            begin(session.evaluation().current().orElseThrow(), false);
        }
    }

    private void begin(StudyResult base, boolean openOnly) {
        Study copy = EcoreUtil.copy(session.study());
        int revision = session.revision();
        phase = Phase.RUNNING;
        failure = "";
        startedNanos = System.nanoTime();
        job = new WhatIfJob(new WhatIfJob.Asked(copy, base, kept, session.file(), openOnly), new WhatIfJob.Listener() {
            @Override
            public void found(WhatIfResults found, String of) {
                later(() -> publish(found, of, revision));
            }

            @Override
            public void ended(WhatIfJob.Outcome outcome) {
                later(() -> end(outcome));
            }
        });
        job.schedule();
        session.whatIfChanged();
    }

    private void later(Runnable told) {
        if (!display.isDisposed()) {
            display.asyncExec(told);
        }
    }

    private void publish(WhatIfResults found, String of, int revision) {
        results = Optional.of(found);
        fingerprint = of;
        stands(of, revision);
        session.whatIfChanged();
    }

    /** The study was in a state at a revision. */
    private void stands(String state, int revision) {
        if (revision == session.revision()) {
            present = state;
            presentRevision = revision;
        }
    }

    private void end(WhatIfJob.Outcome outcome) {
        job = null;
        failure = outcome.failure();
        kept = outcome.kept().or(() -> kept);
        phase = !failure.isEmpty() ? Phase.FAILED : outcome.complete() ? Phase.DONE : Phase.STOPPED;
        session.whatIfChanged();
    }

    /** Stops the run; what is done is kept. */
    public void stop() {
        if (job != null) {
            job.cancel();
        }
    }

    /**
     * Looks once, when the study's results are known, for a run that is kept beside its file, and after each edit whether the study
     * is still the one of the run.
     */
    void evaluated() {
        if (session.evaluation().current().isEmpty() || session.study().getWhatIf() == null) {
            return;
        }
        Optional<Path> file = looked ? Optional.empty() : session.file();
        looked |= file.isPresent();
        int revision = session.revision();
        if (file.isPresent() || results.isPresent() && presentRevision != revision) {
            new WhatIfLook(EcoreUtil.copy(session.study()), file, seen -> later(() -> saw(seen, revision))).schedule();
        }
    }

    private void saw(WhatIfLook.Seen seen, int revision) {
        stands(seen.fingerprint(), revision);
        if (seen.kept().isPresent() && job == null && results.isEmpty()) {
            kept = seen.kept();
            open(seen.kept().get().fingerprint());
        }
        session.whatIfChanged();
    }

    private void open(String of) {
        Optional<StudyResult> base = session.evaluation().current();
        if (base.isPresent() && presentRevision == session.revision() && of.equals(present)) {
            begin(base.get(), true);
        } else {
            phase = Phase.OUTDATED_FILE;
        }
    }

    /** The study was saved to a file, where the run belongs from now on. */
    void saved(Path study) {
        kept.ifPresent(k -> Job.createSystem(Messages.WhatIf_job, (ICoreRunnable) monitor -> WhatIfJob.write(k, study,
                e -> ILog.of(WhatIfWork.class).warn(e.getMessage(), e))).schedule());
    }
}
