package org.amberyard.workbench.plan;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.amberyard.core.plan.BestPlan;
import org.amberyard.core.plan.BestPlanAim;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.plans.Plan;
import org.amberyard.study.BestWords;
import org.amberyard.study.PlanBest;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.session.StudySession;
import org.amberyard.workbench.work.JobProgress;
import org.amberyard.workbench.work.Owner;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;

/** Asks what the best plan may decide, looks for it beside the window, shows it, and writes it on OK. */
public final class BestDialog extends PlanPreviewDialog {
    private static final int PERCENT = 100;

    private final StudyResult result;
    private BestForm form;
    private Button start;
    private Job search;

    /** @param result results of the study as it stands */
    public BestDialog(Shell parent, StudySession session, Plan plan, StudyResult result) {
        super(parent, session, plan,
                new Texts(Messages.Best_titleOf, Messages.Best_accept, Messages.Best_done, new Point(680, 600)));
        this.result = result;
    }

    @Override
    void createForm(Composite area) {
        form = new BestForm(area, session().study(), plan(), this::entered);
        start = new Button(area, SWT.PUSH);
        start.setText(Messages.Best_search);
        start.addListener(SWT.Selection, e -> search());
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(start);
    }

    @Override
    void opened() {
        preview(Messages.Best_about, Optional.empty());
    }

    /** What was found for other entries is not theirs. */
    private void entered() {
        stop();
        opened();
    }

    private void search() {
        Optional<BestPlanAim> aim = form.aim();
        if (aim.isEmpty()) {
            preview(form.refusal(), Optional.empty());
            return;
        }
        stop();
        preview(Messages.Best_searching, Optional.empty());
        search = search(aim.get(), session().study().getPlans().indexOf(plan()), new Owner(preview()));
        search.schedule();
    }

    private Job search(BestPlanAim aim, int place, Owner owner) {
        return new Job(Messages.Best_searching) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                try {
                    BestPlan found = PlanBest.search(result, place, aim, new JobProgress(owner, () -> !monitor.isCanceled(),
                            share -> tell(this, share)));
                    owner.tell(() -> show(this, aim, found));
                    return Status.OK_STATUS;
                } catch (CancellationException e) {
                    return Status.CANCEL_STATUS;
                } catch (IllegalArgumentException e) {
                    owner.tell(() -> refuse(this, e.getMessage()));
                    return Status.OK_STATUS;
                }
            }
        };
    }

    /** A search to other entries may end just when they change; what it tells is thrown away. */
    private boolean isWanted(Job of) {
        return of == search;
    }

    private void tell(Job of, double share) {
        if (isWanted(of)) {
            preview(NLS.bind(Messages.Best_progress, Math.round(PERCENT * share)), Optional.empty());
        }
    }

    private void refuse(Job of, String why) {
        if (isWanted(of)) {
            preview(NLS.bind(Messages.Best_nothing, why), Optional.empty());
        }
    }

    private void show(Job of, BestPlanAim aim, BestPlan found) {
        if (isWanted(of)) {
            PlanBest best = new PlanBest(session().study(), plan(), aim, found);
            preview(Words.say(String.join("\n", BestWords.of(best))), Optional.of(best::write));
        }
    }

    private void stop() {
        if (search != null) {
            search.cancel();
            search = null;
        }
    }

    @Override
    public boolean close() {
        stop();
        return super.close();
    }
}
