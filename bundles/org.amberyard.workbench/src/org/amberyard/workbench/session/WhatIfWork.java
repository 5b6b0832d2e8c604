package org.amberyard.workbench.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.exchange.WhatIfFile;
import org.amberyard.model.study.Study;
import org.amberyard.study.whatif.SavedRun;
import org.amberyard.study.whatif.StudyFingerprint;
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
    private int fingerprintRevision = -1;
    private String present = "";
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
        return results.isPresent() && !fingerprint.equals(present());
    }

    /** True when it can be run: there are results and uncertain inputs. */
    public boolean canRun() {
        return phase != Phase.RUNNING && session.evaluation().current().isPresent() && session.study().getWhatIf() != null
                && !session.study().getWhatIf().getInputs().isEmpty();
    }

    /** Runs it, or goes on where it was stopped as long as the study is the same. */
    public void run() {
        if (canRun()) {
            begin(session.evaluation().current().orElseThrow(), kept.filter(k -> k.fingerprint().equals(present())), false);
        }
    }

    private void begin(StudyResult base, Optional<SavedRun> before, boolean openOnly) {
        Study copy = EcoreUtil.copy(session.study());
        String asked = present();
        phase = Phase.RUNNING;
        failure = "";
        startedNanos = System.nanoTime();
        job = new WhatIfJob(new WhatIfJob.Asked(copy, base, before, session.file(), openOnly), new WhatIfJob.Listener() {
            @Override
            public void found(WhatIfResults found) {
                later(() -> publish(found, asked));
            }

            @Override
            public void ended(Optional<SavedRun> all, boolean complete, String why) {
                later(() -> end(all, complete, why));
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

    private void publish(WhatIfResults found, String of) {
        results = Optional.of(found);
        fingerprint = of;
        session.whatIfChanged();
    }

    private void end(Optional<SavedRun> all, boolean complete, String why) {
        job = null;
        failure = why;
        kept = all.or(() -> kept);
        phase = !why.isEmpty() ? Phase.FAILED : complete ? Phase.DONE : Phase.STOPPED;
        session.whatIfChanged();
    }

    /** Stops the run; what is done is kept. */
    public void stop() {
        if (job != null) {
            job.cancel();
        }
    }

    /** Looks once, when the study's results are known, for a run that is kept beside its file. */
    void evaluated() {
        Optional<Path> file = session.file();
        if (looked || file.isEmpty() || session.evaluation().current().isEmpty() || session.study().getWhatIf() == null) {
            return;
        }
        looked = true;
        try {
            kept = WhatIfFile.read(WhatIfFile.beside(file.get()));
        } catch (IOException e) {
            ILog.of(WhatIfWork.class).warn(e.getMessage(), e);
        }
        if (kept.isPresent() && kept.get().fingerprint().equals(present())) {
            begin(session.evaluation().current().orElseThrow(), kept, true);
        } else if (kept.isPresent()) {
            phase = Phase.OUTDATED_FILE;
            session.whatIfChanged();
        }
    }

    /** The study was saved to a file, where the run belongs from now on. */
    void saved(Path study) {
        kept.ifPresent(k -> Job.createSystem(Messages.WhatIf_job, (ICoreRunnable) monitor -> WhatIfJob.write(k, study,
                e -> ILog.of(WhatIfWork.class).warn(e.getMessage(), e))).schedule());
    }

    private String present() {
        if (fingerprintRevision != session.revision()) {
            present = StudyFingerprint.of(session.study());
            fingerprintRevision = session.revision();
        }
        return present;
    }
}
