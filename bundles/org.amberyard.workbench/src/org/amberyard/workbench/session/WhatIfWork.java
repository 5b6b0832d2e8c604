package org.amberyard.workbench.session;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.WhatifPackage;
import org.amberyard.study.InputDifferences.Difference;
import org.amberyard.study.whatif.SavedRun;
import org.amberyard.workbench.work.EventQueue;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;

/** The what-if of a study that is open: run in the background, stopped, gone on with, kept beside the study's file. Used on the event thread. */
public final class WhatIfWork {
    private static final double NANOS_PER_S = 1e9;
    /** Too little is done to tell how long the rest takes. */
    private static final double LEAST_SHARE = 0.01;
    /** No revision of a session: the study that is run was never the one that is open. */
    private static final int NEVER = -1;

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
        /** A run was kept for another state of the study, which cannot be told any more. */
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
    private Optional<Study> ran = Optional.empty();
    private List<Difference> changes = List.of();
    private String fingerprint = "";
    private String present = "";
    private int presentRevision = NEVER;
    private WhatIfJob job;
    private boolean stopping;
    private long startedNanos;
    private boolean looked;
    /** Revision of the session for which it is run as soon as results are known. */
    private int awaited = NEVER;

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

    /** True from when it was told to stop until it has: draws that are begun are ended, and what is done is kept. */
    public boolean isStopping() {
        return stopping;
    }

    /** The study that the results are of, which nobody edits; empty while there are none. */
    public Optional<Study> ran() {
        return ran;
    }

    /** True when the results are those of an earlier state of the study. */
    public boolean isOutdated() {
        return results.isPresent() && !(presentRevision == session.revision() && fingerprint.equals(present));
    }

    /** What has changed since the run whose results are on show; empty while that is not known, and where they are of the study as it is. */
    public Optional<List<Difference>> changedSince() {
        return isOutdated() && presentRevision == session.revision() ? Optional.of(changes) : Optional.empty();
    }

    /** True when it can be run: there are results and uncertain inputs. */
    public boolean canRun() {
        return phase != Phase.RUNNING && session.evaluation().current().isPresent() && session.study().getWhatIf() != null
                && !session.study().getWhatIf().getInputs().isEmpty();
    }

    /**
     * Finds out how long a run would take; the answer comes on the event thread, empty where none could be found. There is none as long as
     * it cannot be run, nor where the search was cancelled.
     *
     * @param ended happens on the event thread in any case, before the answer
     */
    public void estimate(Consumer<Optional<RunEstimate>> told, Runnable ended) {
        if (canRun()) {
            new EstimateJob(EcoreUtil.copy(session.study()), session.evaluation().current().orElseThrow(), isOutdated() ? Optional.empty() : kept,
                    found -> later(() -> told.accept(found)), () -> later(ended)).schedule();
        } else {
            ended.run();
        }
    }

    /**
     * Sets the number of draws, as an edit that can be undone, and runs it as soon as results are known again; not at all where the study is
     * edited before.
     */
    public void runWith(int draws) {
        session.execute(SetCommand.create(session.domain(), session.study().getWhatIf(), WhatifPackage.Literals.WHAT_IF__DRAWS, draws),
                NLS.bind(Messages.WhatIf_fewerDraws, draws));
        awaited = session.revision();
        runAwaited();
    }

    private void runAwaited() {
        if (session.evaluation().phase() == Evaluation.Phase.STALE) {
            awaited = NEVER;
        }
        if (awaited == session.revision()) {
            run();
        }
    }

    /** Runs it, or goes on where it was stopped as long as the study is the same. */
    public void run() {
        if (canRun()) {
            begin(new WhatIfJob.Asked(EcoreUtil.copy(session.study()), session.evaluation().current(), kept, session.file(), false),
                    session.revision());
        }
    }

    /** @param revision that of the session in which its study is the one asked for */
    private void begin(WhatIfJob.Asked asked, int revision) {
        phase = Phase.RUNNING;
        awaited = NEVER;
        failure = "";
        startedNanos = System.nanoTime();
        job = new WhatIfJob(asked, new WhatIfJob.Listener() {
            @Override
            public void found(WhatIfResults found, String of) {
                later(() -> publish(found, asked.study(), of, revision));
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
        new EventQueue(display).later(told);
    }

    private void publish(WhatIfResults found, Study of, String state, int revision) {
        boolean another = ran.filter(r -> r == of).isEmpty();
        results = Optional.of(found);
        ran = Optional.of(of);
        fingerprint = state;
        stands(state, revision);
        if (another && isOutdated()) {
            look(Optional.empty());
        }
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
        stopping = false;
        failure = outcome.failure();
        kept = outcome.kept().or(() -> kept);
        phase = !failure.isEmpty() ? Phase.FAILED : outcome.complete() ? Phase.DONE : Phase.STOPPED;
        session.whatIfChanged();
    }

    /** Stops the run; what is done is kept. */
    public void stop() {
        if (job != null && !stopping) {
            stopping = true;
            job.cancel();
            session.whatIfChanged();
        }
    }

    /**
     * Looks once, when the study's results are known, for a run that is kept beside its file, and after each edit whether the study
     * is still the one of the run.
     */
    void evaluated() {
        runAwaited();
        if (session.evaluation().current().isEmpty() || session.study().getWhatIf() == null) {
            return;
        }
        Optional<Path> file = looked ? Optional.empty() : session.file();
        looked |= file.isPresent();
        if (file.isPresent() || results.isPresent() && presentRevision != session.revision()) {
            look(file);
        }
    }

    private void look(Optional<Path> file) {
        int revision = session.revision();
        new WhatIfLook(EcoreUtil.copy(session.study()), file, ran, seen -> later(() -> saw(seen, revision))).schedule();
    }

    private void saw(WhatIfLook.Seen seen, int revision) {
        stands(seen.fingerprint(), revision);
        changes = seen.changes();
        if (seen.kept().isPresent() && job == null && results.isEmpty()) {
            kept = seen.kept();
            open(seen);
        }
        session.whatIfChanged();
    }

    private void open(WhatIfLook.Seen seen) {
        Optional<StudyResult> base = session.evaluation().current();
        if (base.isPresent() && presentRevision == session.revision() && seen.kept().orElseThrow().fingerprint().equals(present)) {
            begin(new WhatIfJob.Asked(EcoreUtil.copy(session.study()), base, kept, session.file(), true), presentRevision);
        } else if (seen.then().isPresent()) {
            begin(new WhatIfJob.Asked(seen.then().get(), Optional.empty(), kept, session.file(), true), NEVER);
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
