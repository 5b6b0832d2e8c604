package org.amberyard.workbench.session;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.study.Study;
import org.amberyard.study.whatif.SavedRun;
import org.amberyard.study.whatif.WhatIfRun;
import org.amberyard.workbench.work.JobProgress;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Times the first draws of a what-if, off the event thread. */
final class EstimateJob extends Job {
    private static final double NANOS_PER_S = 1e9;
    /** Draws that may be enough, the most first. */
    private static final int[] FEWER = {1000, 500, 200};

    private final Study study;
    private final StudyResult base;
    private final Optional<SavedRun> before;
    private final Consumer<Optional<RunEstimate>> told;
    private final Runnable ended;

    /**
     * @param study a copy that nobody else edits
     * @param told hears of the estimate on the thread of the job; empty where none could be made
     * @param ended happens on the thread of the job before that, and also when it was cancelled
     */
    EstimateJob(Study study, StudyResult base, Optional<SavedRun> before, Consumer<Optional<RunEstimate>> told, Runnable ended) {
        super(Messages.WhatIf_estimating);
        this.study = study;
        this.base = base;
        this.before = before;
        this.told = told;
        this.ended = ended;
        setSystem(true);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        Optional<RunEstimate> found = Optional.empty();
        try {
            found = Optional.of(estimate(monitor));
        } catch (CancellationException e) {
            return Status.CANCEL_STATUS;
        } catch (RuntimeException | OutOfMemoryError e) {
            // The run itself tells what is wrong.
            ILog.of(EstimateJob.class).warn(e.getMessage(), e);
        } finally {
            ended.run();
        }
        told.accept(found);
        return Status.OK_STATUS;
    }

    private RunEstimate estimate(IProgressMonitor monitor) {
        int threads = Runtime.getRuntime().availableProcessors();
        WhatIfRun run = new WhatIfRun(study, base, threads, before);
        int evaluations = run.wholeEvaluations();
        int draws = study.getWhatIf().getDraws();
        if (evaluations == 0) {
            return new RunEstimate(0, 0, draws, 0);
        }
        long began = System.nanoTime();
        int tried = run.tryOut(threads, done -> JobProgress.goOn(monitor));
        double each = (System.nanoTime() - began) / NANOS_PER_S / Math.max(1, tried);
        int fewer = draws;
        double seconds = evaluations * each;
        for (int next : FEWER) {
            if (next < draws && seconds > RunEstimate.LONG_S) {
                fewer = next;
                seconds = evaluations(next, threads) * each;
            }
        }
        return new RunEstimate(evaluations, evaluations * each, fewer, seconds);
    }

    private int evaluations(int draws, int threads) {
        Study other = EcoreUtil.copy(study);
        other.getWhatIf().setDraws(draws);
        return new WhatIfRun(other, base, threads, Optional.empty()).wholeEvaluations();
    }
}
