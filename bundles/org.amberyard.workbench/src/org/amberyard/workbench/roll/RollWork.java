package org.amberyard.workbench.roll;

import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

/** Rolls a copy of a study off the event thread. */
final class RollWork extends Job {

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

    private final Study study;
    private final Chosen chosen;
    private final StudyEvaluator evaluator;
    private final Display display;
    private final BiConsumer<RollWork, Rolled> done;

    /**
     * @param study a copy that nobody edits
     * @param evaluator keeps what it has found from one choice to the next
     * @param done is told on the event thread
     */
    RollWork(Study study, Chosen chosen, StudyEvaluator evaluator, Display display, BiConsumer<RollWork, Rolled> done) {
        super(Messages.Roll_title);
        this.study = study;
        this.chosen = chosen;
        this.evaluator = evaluator;
        this.display = display;
        this.done = done;
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        Rolled rolled = rolled();
        if (monitor.isCanceled() || display.isDisposed()) {
            return Status.CANCEL_STATUS;
        }
        display.asyncExec(() -> done.accept(this, rolled));
        return Status.OK_STATUS;
    }

    private Rolled rolled() {
        Plan plan = study.getPlans().get(chosen.plan());
        List<Sourced> past = PastSteps.of(plan, study.getSettings().getBaseYear(), chosen.toYear());
        Set<Sourced> late = IntStream.range(0, past.size()).filter(chosen.late()::contains).mapToObj(past::get)
                .collect(Collectors.toSet());
        YearRoll roll = YearRoll.of(study, new RollChoice(chosen.toYear(), plan, chosen.sameEnd(), late), evaluator::evaluate);
        List<ActualProposal> proposals = roll.proposals();
        roll.take(proposals.stream().filter(p -> chosen.taken().contains(p.kind())).toList());
        UnitSystem units = StudyUnits.of(study);
        return new Rolled(roll, proposals, YearVariance.of(roll.before(), roll.carriedOut(), roll.years(), units));
    }
}
