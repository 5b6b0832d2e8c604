package org.amberyard.workbench.narrative;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.report.papers.FigureSource;
import org.amberyard.report.papers.NarrativeFigures;
import org.amberyard.report.papers.ReadFigures;
import org.amberyard.report.papers.StudyFacts;
import org.amberyard.workbench.session.FigureReading;
import org.amberyard.workbench.work.Failure;
import org.amberyard.workbench.work.JobProgress;
import org.amberyard.workbench.work.Owner;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Control;

/** Reads the figures of narratives off the tables in the background; of several requests only the last counts. */
final class FigureWork extends Job {

    /**
     * Figures of results.
     *
     * @param result results that they are of
     * @param place place of the plan that is looked at
     * @param source what is looked at
     * @param bySource figures by what they are of
     */
    record Found(StudyResult result, int place, FigureSource source, Map<FigureSource, NarrativeFigures> bySource) {
        /** True when they are of a plan of some results. */
        boolean of(StudyResult other, int plan) {
            return result == other && place == plan;
        }

        NarrativeFigures figures() {
            return bySource.get(source);
        }
    }

    private record Request(StudyResult result, StudyFacts facts, int plan, Set<FigureSource> others) {
    }

    private final Owner owner;
    private final FigureReading reading;
    private final Consumer<Found> listener;
    private final Consumer<String> failed;
    private volatile Request wanted;

    /**
     * @param reading where figures are read that others read as well
     * @param listener hears on the event thread, as long as its control is there
     * @param failed hears why there are no figures, likewise
     */
    FigureWork(Control owner, FigureReading reading, Consumer<Found> listener, Consumer<String> failed) {
        super(Messages.Narrative_reading);
        this.owner = new Owner(owner);
        this.reading = reading;
        this.listener = listener;
        this.failed = failed;
        setSystem(true);
        setRule(reading);
    }

    /**
     * Asks for the figures of a plan, and those that were given out.
     *
     * @param others of which figures were given out
     */
    void find(StudyResult result, StudyFacts facts, int plan, Set<FigureSource> others) {
        wanted = new Request(result, facts, plan, Set.copyOf(others));
        schedule();
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        Request request = wanted;
        try {
            Found found = found(request, new JobProgress(owner, () -> request == wanted && !monitor.isCanceled(), share -> {}));
            answer(request, () -> listener.accept(found));
        } catch (CancellationException e) {
            return Status.CANCEL_STATUS;
        } catch (RuntimeException e) {
            // A table that cannot be made must not take the window down.
            ILog.of(FigureWork.class).error(e.getMessage(), e);
            answer(request, () -> failed.accept(Failure.words(e)));
        }
        return Status.OK_STATUS;
    }

    private Found found(Request request, Progress progress) {
        FigureSource looked = new FigureSource(request.result().plans().get(request.plan()).name(), Optional.empty());
        Set<FigureSource> sources = new LinkedHashSet<>(Set.of(looked));
        sources.addAll(request.others());
        Map<FigureSource, NarrativeFigures> bySource = new HashMap<>();
        ReadFigures read = reading.of(request.result(), request::facts);
        sources.forEach(source -> read.of(source).ifPresent(figures -> {
            figures.readAll(progress);
            bySource.put(source, figures);
        }));
        return new Found(request.result(), request.plan(), looked, bySource);
    }

    private void answer(Request request, Runnable heard) {
        owner.tell(() -> request == wanted, heard);
    }
}
