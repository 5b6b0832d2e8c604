package org.amberyard.workbench.plan;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.amberyard.core.plan.CapLevelling;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.Plan;
import org.amberyard.study.LevelWords;
import org.amberyard.study.PlanLevel;
import org.amberyard.workbench.session.StudySession;
import org.amberyard.workbench.work.JobProgress;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Looks beside the window for moves that keep a plan within its cap, shows them, and makes them on OK. */
public final class LevelDialog extends Dialog {

    private static final Point SIZE = new Point(560, 420);

    private final StudySession session;
    private final Plan plan;
    private final StudyResult result;
    private Text preview;
    private Job search;
    private Optional<PlanLevel> level = Optional.empty();

    /** @param result results of the study as it stands */
    public LevelDialog(Shell parent, StudySession session, Plan plan, StudyResult result) {
        super(parent);
        this.session = session;
        this.plan = plan;
        this.result = result;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(NLS.bind(Messages.Level_titleOf, ElementNames.of(plan)));
    }

    @Override
    protected boolean isResizable() {
        return true;
    }

    @Override
    protected Point getInitialSize() {
        return SIZE;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        preview = new Text(area, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.BORDER);
        preview.setText(Messages.Level_searching);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(preview);
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.Level_accept, true).setEnabled(false);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        search = search(session.study().getPlans().indexOf(plan), preview.getDisplay());
        search.schedule();
    }

    private Job search(int place, Display display) {
        return new Job(Messages.Level_searching) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                try {
                    CapLevelling found = PlanLevel.levelling(result, place,
                            new JobProgress(preview, () -> !monitor.isCanceled(), share -> { }));
                    display.asyncExec(() -> show(found));
                    return Status.OK_STATUS;
                } catch (CancellationException e) {
                    return Status.CANCEL_STATUS;
                }
            }
        };
    }

    private void show(CapLevelling found) {
        if (!preview.isDisposed()) {
            PlanLevel shown = new PlanLevel(session.study(), plan, found);
            level = Optional.of(shown);
            preview.setText(String.join("\n", LevelWords.of(shown)));
            getButton(IDialogConstants.OK_ID).setEnabled(!shown.isEmpty());
        }
    }

    @Override
    protected void okPressed() {
        level.ifPresent(l -> session.execute(
                new PlanEdits.Edit(plan, NLS.bind(Messages.Level_done, ElementNames.of(plan)), l::write)));
        super.okPressed();
    }

    @Override
    public boolean close() {
        if (search != null) {
            search.cancel();
        }
        return super.close();
    }
}
