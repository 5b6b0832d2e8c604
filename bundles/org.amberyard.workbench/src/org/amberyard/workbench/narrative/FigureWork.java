package org.amberyard.workbench.narrative;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.report.papers.NarrativeFigures;
import org.amberyard.report.papers.PaperChoices;
import org.amberyard.report.papers.PaperInput;
import org.amberyard.report.papers.StudyFacts;
import org.amberyard.study.FigureName;
import org.amberyard.workbench.work.Failure;
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
     * Figures of plans.
     *
     * @param result results that they are of
     * @param place place of the plan that is looked at
     * @param plan name of the plan that is looked at
     * @param byPlan figures by the name of their plan
     */
    record Found(StudyResult result, int place, String plan, Map<String, NarrativeFigures> byPlan) {
        /** True when they are of a plan of some results. */
        boolean of(StudyResult other, int plan) {
            return result == other && place == plan;
        }

        NarrativeFigures figures() {
            return byPlan.get(plan);
        }
    }

    private record Request(StudyResult result, StudyFacts facts, int plan, Set<String> others) {
    }

    private final Owner owner;
    private final Consumer<Found> listener;
    private final Consumer<String> failed;
    private volatile Request wanted;

    /**
     * @param listener hears on the event thread, as long as its control is there
     * @param failed hears why there are no figures, likewise
     */
    FigureWork(Control owner, Consumer<Found> listener, Consumer<String> failed) {
        super(Messages.Narrative_reading);
        this.owner = new Owner(owner);
        this.listener = listener;
        this.failed = failed;
        setSystem(true);
    }

    /**
     * Asks for the figures of a plan, and of others whose figures were given out.
     *
     * @param others names of other plans
     */
    void find(StudyResult result, StudyFacts facts, int plan, Set<String> others) {
        wanted = new Request(result, facts, plan, Set.copyOf(others));
        schedule();
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        Request request = wanted;
        try {
            Map<String, NarrativeFigures> byPlan = new LinkedHashMap<>();
            for (int plan = 0; plan < request.result().plans().size(); plan++) {
                String name = request.result().plans().get(plan).name();
                if (plan == request.plan() || request.others().contains(name)) {
                    byPlan.put(name, figures(request, plan));
                }
            }
            answer(request, () -> listener.accept(new Found(request.result(), request.plan(), request.result().plans().get(request.plan()).name(), byPlan)));
        } catch (RuntimeException e) {
            // A table that cannot be made must not take the window down.
            ILog.of(FigureWork.class).error(e.getMessage(), e);
            answer(request, () -> failed.accept(Failure.words(e)));
        }
        return Status.OK_STATUS;
    }

    private static NarrativeFigures figures(Request request, int plan) {
        NarrativeFigures figures = new NarrativeFigures(new PaperInput(request.result(), plan, request.facts(), PaperChoices.STANDARD));
        for (FigureName name : FigureName.values()) {
            figures.of(name);
        }
        return figures;
    }

    private void answer(Request request, Runnable heard) {
        owner.tell(() -> request == wanted, heard);
    }
}
