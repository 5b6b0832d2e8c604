package org.amberyard.workbench.session;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.report.papers.NarrativeFacts;
import org.amberyard.report.papers.ReadFigures;
import org.amberyard.report.papers.StaleNarrative;
import org.amberyard.report.papers.StudyFacts;
import org.amberyard.workbench.work.EventQueue;
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
    private final FigureReading reading;
    private final Consumer<StudyResult> told;
    private final Runnable begin = this::begin;
    private final Job looking = new Look();
    private List<StaleNarrative> stale = List.of();
    private StudyResult due;
    private volatile Asked asked;

    /**
     * A state of the study to look at.
     *
     * @param result its results
     * @param of a copy of it, which nobody edits
     */
    private record Asked(StudyResult result, Study of) {
    }

    /** @param told hears of which results stale narratives were found, where there are any */
    NarrativeWatch(Study study, Display display, FigureReading reading, Consumer<StudyResult> told) {
        this.study = study;
        this.display = display;
        this.reading = reading;
        this.told = told;
        looking.setRule(reading);
    }

    /** What was found in the results that were looked at last; nothing while a look is due. */
    List<Finding> findings() {
        return stale.stream().filter(s -> s.isOf(study)).map(s -> s.finding(study)).toList();
    }

    /** Looks at the results of the study as it is; nobody waits for those of before any more, and what was found in them is forgotten. */
    void look(StudyResult result) {
        stop();
        stale = List.of();
        if (StaleNarrative.isPossible(study)) {
            due = result;
            display.timerExec(REST_MS, begin);
        }
    }

    void stop() {
        display.timerExec(-1, begin);
        asked = null;
        looking.cancel();
    }

    private void begin() {
        asked = new Asked(due, EcoreUtil.copy(study));
        looking.schedule();
    }

    private void found(Asked by, List<StaleNarrative> now) {
        if (by == asked) {
            stale = now;
            if (!now.isEmpty()) {
                told.accept(by.result());
            }
        }
    }

    /** Looks at the figures of what was asked for last. */
    private final class Look extends Job {
        Look() {
            super(Messages.NarrativeWatch_name);
            setSystem(true);
            setPriority(DECORATE);
        }

        @Override
        protected IStatus run(IProgressMonitor monitor) {
            Asked now = asked;
            if (now == null) {
                return Status.CANCEL_STATUS;
            }
            try {
                ReadFigures figures = reading.of(now.result(), () -> StudyFacts.of(now.of()));
                List<StaleNarrative> all = StaleNarrative.all(figures, NarrativeFacts.of(now.of()), share -> JobProgress.goOn(monitor));
                new EventQueue(display).later(() -> found(now, all));
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
