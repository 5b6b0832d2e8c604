package org.amberyard.workbench.session;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.report.papers.StaleNarrative;
import org.amberyard.report.papers.StudyFacts;
import org.amberyard.workbench.work.JobProgress;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.widgets.Display;

/**
 * Looks for narratives that were given out with figures that are others by now. Their tables take longer than results should wait for,
 * so it looks in the background, once edits have come to rest. Used on the event thread.
 */
final class NarrativeWatch {
    /** Edits that follow each other faster than this are looked at together. */
    private static final int REST_MS = 700;

    private final Study study;
    private final Display display;
    private final Consumer<StudyResult> told;
    private final Runnable begin = this::begin;
    private List<StaleNarrative> stale = List.of();
    private StudyResult wanted;
    private Job looking;

    /** @param told hears of which results stale narratives were found anew, where they are others than before */
    NarrativeWatch(Study study, Display display, Consumer<StudyResult> told) {
        this.study = study;
        this.display = display;
        this.told = told;
    }

    /** What was found last, of narratives that are as they were then. */
    List<Finding> findings() {
        return stale.stream().filter(s -> s.isOf(study)).map(s -> s.finding(study)).toList();
    }

    /** Looks at the results of the study as it is; nobody waits for those of before any more. */
    void look(StudyResult result) {
        stop();
        if (StaleNarrative.isPossible(study)) {
            wanted = result;
            display.timerExec(REST_MS, begin);
        } else {
            stale = List.of();
        }
    }

    void stop() {
        display.timerExec(-1, begin);
        if (looking != null) {
            looking.cancel();
            looking = null;
        }
    }

    private void begin() {
        looking = new Look(wanted, EcoreUtil.copy(study));
        looking.schedule();
    }

    private void found(Job by, StudyResult of, List<StaleNarrative> now) {
        if (by == looking) {
            looking = null;
            boolean other = !now.equals(stale);
            stale = now;
            if (other) {
                told.accept(of);
            }
        }
    }

    /** Looks at the figures of a state of the study. */
    private final class Look extends Job {
        private final StudyResult result;
        private final Study of;

        /** @param of a copy of the study of the results, which nobody edits */
        Look(StudyResult result, Study of) {
            super(Messages.NarrativeWatch_name);
            this.result = result;
            this.of = of;
            setSystem(true);
            setPriority(DECORATE);
        }

        @Override
        protected IStatus run(IProgressMonitor monitor) {
            try {
                List<StaleNarrative> now = StaleNarrative.all(result, StudyFacts.of(of), share -> JobProgress.goOn(monitor));
                if (!display.isDisposed()) {
                    display.asyncExec(() -> found(this, result, now));
                }
            } catch (CancellationException e) {
                return Status.CANCEL_STATUS;
            } catch (RuntimeException e) {
                // A table that cannot be made is told where it is asked for; findings go on without it.
                ILog.of(NarrativeWatch.class).error(e.getMessage(), e);
            }
            return Status.OK_STATUS;
        }
    }
}
