package org.amberyard.workbench.plan;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.amberyard.core.plan.CapLevelling;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.plans.Plan;
import org.amberyard.study.LevelWords;
import org.amberyard.study.PlanLevel;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.session.StudySession;
import org.amberyard.workbench.work.JobProgress;
import org.amberyard.workbench.work.Owner;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Shell;

/** Looks beside the window for moves that keep a plan within its cap, shows them, and makes them on OK. */
public final class LevelDialog extends PlanPreviewDialog {

    private final StudyResult result;
    private Job search;

    /** @param result results of the study as it stands */
    public LevelDialog(Shell parent, StudySession session, Plan plan, StudyResult result) {
        super(parent, session, plan,
                new Texts(Messages.Level_titleOf, Messages.Level_accept, Messages.Level_done, new Point(560, 420)));
        this.result = result;
    }

    @Override
    void opened() {
        preview(Messages.Level_searching, Optional.empty());
        search = search(session().study().getPlans().indexOf(plan()), new Owner(preview()));
        search.schedule();
    }

    private Job search(int place, Owner owner) {
        return new Job(Messages.Level_searching) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                try {
                    CapLevelling found = PlanLevel.levelling(result, place,
                            new JobProgress(owner, () -> !monitor.isCanceled(), share -> {}));
                    owner.tell(() -> show(found));
                    return Status.OK_STATUS;
                } catch (CancellationException e) {
                    return Status.CANCEL_STATUS;
                }
            }
        };
    }

    private void show(CapLevelling found) {
        PlanLevel level = new PlanLevel(session().study(), plan(), found);
        preview(Words.say(String.join("\n", LevelWords.of(level))),
                level.isEmpty() ? Optional.empty() : Optional.of(level::write));
    }

    @Override
    public boolean close() {
        if (search != null) {
            search.cancel();
        }
        return super.close();
    }
}
