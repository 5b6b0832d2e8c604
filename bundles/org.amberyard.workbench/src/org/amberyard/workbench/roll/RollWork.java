package org.amberyard.workbench.roll;

import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Study;
import org.amberyard.report.YearVariance;
import org.amberyard.study.StudyEvaluator;
import org.amberyard.study.StudyUnits;
import org.amberyard.study.roll.ActualProposal;
import org.amberyard.study.roll.PastSteps;
import org.amberyard.study.roll.RollChoice;
import org.amberyard.study.roll.YearRoll;
import org.amberyard.workbench.work.Failure;
import org.amberyard.workbench.work.JobProgress;
import org.amberyard.workbench.work.Owner;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Control;

/** Rolls copies of a study off the event thread, one at a time; only what was asked last is told, and what was asked before stops. */
final class RollWork extends Job {
    private static final long PAUSE_MS = 120;

    /**
     * What was chosen.
     *
     * @param toYear the new base year
     * @param plan place of the plan that was carried out
     * @param sameEnd true where the study ends as before
     * @param late places of its steps that were not carried out, among those that are over
     * @param taken kinds of actuals that take the place of assumptions
     */
    record Chosen(int toYear, int plan, boolean sameEnd, Set<Integer> late, Set<ActualProposal.Kind> taken) {
    }

    /**
     * What came of it.
     *
     * @param roll the study rolled, with the actuals that were taken
     * @param proposals all actuals that could take the place of an assumption
     * @param variances how the years that are over went beside the plan
     */
    record Rolled(YearRoll roll, List<ActualProposal> proposals, List<YearVariance> variances) {
    }

    /**
     * Something that was asked.
     *
     * @param study a copy that nobody edits
     * @param chosen what was chosen
     */
    private record Asked(Study study, Chosen chosen) {
    }

    private final StudyEvaluator evaluator = new StudyEvaluator();
    private final Owner owner;
    private final Consumer<Rolled> done;
    private final Consumer<String> failed;
    private volatile Asked asked;

    /**
     * @param owner what the results are for; nothing is told once it is disposed
     * @param done is told on the event thread
     * @param failed hears on the event thread why nothing came of what was asked
     */
    RollWork(Control owner, Consumer<Rolled> done, Consumer<String> failed) {
        super(Messages.Roll_title);
        this.owner = new Owner(owner);
        this.done = done;
        this.failed = failed;
    }

    /** Asks for a study rolled instead of what was asked before. */
    void ask(Study study, Chosen chosen) {
        asked = new Asked(study, chosen);
        cancel();
        schedule(PAUSE_MS);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        Asked now = asked;
        Progress progress = new JobProgress(owner, () -> now == asked && !monitor.isCanceled(), share -> {});
        try {
            Rolled rolled = rolled(now.study(), now.chosen(), progress);
            tell(now, () -> done.accept(rolled));
        } catch (CancellationException e) {
            return Status.CANCEL_STATUS;
        } catch (RuntimeException e) {
            // A study that the rules let through may still be beyond the method; the user must hear of it and go on.
            String failure = Failure.words(e);
            ILog.of(RollWork.class).error(failure, e);
            tell(now, () -> failed.accept(failure));
        }
        return Status.OK_STATUS;
    }

    private void tell(Asked of, Runnable telling) {
        owner.tell(() -> of == asked, telling);
    }

    private Rolled rolled(Study study, Chosen chosen, Progress progress) {
        Plan plan = study.getPlans().get(chosen.plan());
        List<Sourced> past = PastSteps.of(plan, study.getSettings().getBaseYear(), chosen.toYear());
        Set<Sourced> late = IntStream.range(0, past.size()).filter(chosen.late()::contains).mapToObj(past::get)
                .collect(Collectors.toSet());
        YearRoll roll = YearRoll.of(study, new RollChoice(chosen.toYear(), plan, chosen.sameEnd(), late),
                input -> evaluator.evaluate(input, progress));
        List<ActualProposal> proposals = roll.proposals();
        roll.take(proposals.stream().filter(p -> chosen.taken().contains(p.kind())).toList());
        UnitSystem units = StudyUnits.of(study);
        return new Rolled(roll, proposals, YearVariance.of(roll.before(), roll.carriedOut(), roll.years(), units));
    }
}
