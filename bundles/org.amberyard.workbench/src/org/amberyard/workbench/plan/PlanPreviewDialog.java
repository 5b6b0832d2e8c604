package org.amberyard.workbench.plan;

import java.util.Optional;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.Plan;
import org.amberyard.workbench.look.SizedDialog;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Says what would change in a plan; OK changes it as one edit that can be undone. */
abstract class PlanPreviewDialog extends SizedDialog {

    /**
     * @param title title, with a place for the plan's name
     * @param accept text of the button that changes the plan
     * @param done name of the edit, with a place for the plan's name
     * @param size size to begin with
     */
    record Texts(String title, String accept, String done, Point size) {
    }

    private final StudySession session;
    private final Plan plan;
    private final Texts texts;
    private Text preview;
    private Optional<Runnable> change = Optional.empty();

    PlanPreviewDialog(Shell parent, StudySession session, Plan plan, Texts texts) {
        super(parent, NLS.bind(texts.title(), ElementNames.of(plan)), texts.size());
        this.session = session;
        this.plan = plan;
        this.texts = texts;
    }

    final StudySession session() {
        return session;
    }

    final Plan plan() {
        return plan;
    }

    /** Controls above the preview, if there are any. */
    void createForm(Composite area) {
    }

    /** Everything is there; shows the first preview or sets out to find it. */
    abstract void opened();

    /**
     * Says what would change.
     *
     * @param text in words
     * @param edit changes the plan; empty when there is nothing to change
     */
    final void preview(String text, Optional<Runnable> edit) {
        change = edit;
        preview.setText(text);
        getButton(IDialogConstants.OK_ID).setEnabled(edit.isPresent());
    }

    /** The preview, which is gone when the dialog is. */
    final Text preview() {
        return preview;
    }

    @Override
    protected final Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        createForm(area);
        preview = new Text(area, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(preview);
        return area;
    }

    @Override
    protected final void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, texts.accept(), true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        opened();
    }

    @Override
    protected final void okPressed() {
        change.ifPresent(edit -> session.execute(new PlanEdits.Edit(plan, NLS.bind(texts.done(), ElementNames.of(plan)), edit)));
        super.okPressed();
    }
}
