package org.amberyard.workbench.plan;

import java.util.Optional;
import org.amberyard.core.plan.FillRule;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.Plan;
import org.amberyard.study.FillWords;
import org.amberyard.study.PlanFill;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Asks for a rule, shows what it writes into a plan and what it leaves as it is; OK writes it. */
public final class FillDialog extends Dialog {

    private static final Point SIZE = new Point(620, 520);

    private final StudySession session;
    private final Plan plan;
    private final StudyResult result;
    private FillForm form;
    private Text preview;
    private Optional<PlanFill> fill = Optional.empty();

    /** @param result results of the study as it stands */
    public FillDialog(Shell parent, StudySession session, Plan plan, StudyResult result) {
        super(parent);
        this.session = session;
        this.plan = plan;
        this.result = result;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(NLS.bind(Messages.Fill_titleOf, ElementNames.of(plan)));
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
        form = new FillForm(area, session.study(), PlanFill.usualPayer(plan), this::show);
        preview = new Text(area, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(preview);
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.Fill_accept, true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        show();
    }

    private void show() {
        Optional<FillRule> rule = form.rule();
        fill = rule.map(r -> PlanFill.of(session.study(), plan, result, r, form.programme()));
        preview.setText(fill.map(f -> String.join("\n", FillWords.of(f))).orElseGet(form::refusal));
        getButton(IDialogConstants.OK_ID).setEnabled(fill.filter(f -> !f.isEmpty()).isPresent());
    }

    @Override
    protected void okPressed() {
        fill.ifPresent(f -> session.execute(
                new PlanEdits.Edit(plan, NLS.bind(Messages.Fill_done, ElementNames.of(plan)), f::write)));
        super.okPressed();
    }
}
