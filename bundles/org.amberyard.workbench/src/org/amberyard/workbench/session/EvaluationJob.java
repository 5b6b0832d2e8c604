package org.amberyard.workbench.session;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.study.StudyEvaluator;
import org.amberyard.workbench.work.Failure;
import org.amberyard.workbench.work.JobProgress;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/** Evaluates one state of a study. */
final class EvaluationJob extends Job {

    private final StudyEvaluator evaluator;
    private final StudyInput input;
    private final Consumer<EvaluationJob> whenDone;
    private volatile double done;
    private volatile StudyResult result;
    private volatile String failure;

    EvaluationJob(StudyEvaluator evaluator, StudyInput input, Consumer<EvaluationJob> whenDone) {
        super(Messages.EvaluationJob_name);
        this.evaluator = evaluator;
        this.input = input;
        this.whenDone = whenDone;
        setSystem(true);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        if (monitor.isCanceled()) {
            return Status.CANCEL_STATUS;
        }
        try {
            StudyResult evaluated = evaluator.evaluate(input, share -> goOn(share, monitor));
            // Remedies take longest and are found when they are first asked for; the window must not wait for them.
            evaluated.outlooks();
            evaluated.covers();
            evaluated.billAudits();
            result = evaluated;
        } catch (CancellationException e) {
            return Status.CANCEL_STATUS;
        } catch (RuntimeException e) {
            // A study that the rules let through may still be beyond the method; the user must hear of it and go on.
            failure = Failure.words(e);
            ILog.of(EvaluationJob.class).error(failure, e);
        }
        if (!monitor.isCanceled()) {
            whenDone.accept(this);
        }
        return Status.OK_STATUS;
    }

    private void goOn(double share, IProgressMonitor monitor) {
        JobProgress.goOn(monitor);
        done = share;
    }

    /** Part of the work that is done, 0 to 1. */
    double done() {
        return done;
    }

    StudyResult result() {
        return result;
    }

    Optional<String> failure() {
        return Optional.ofNullable(failure);
    }
}
