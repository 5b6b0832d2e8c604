package org.amberyard.workbench.fields;

import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.workbench.look.SizedDialog;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** The note on an element: read, written anew, or emptied. */
public final class NoteDialog extends SizedDialog {

    private static final Point SIZE = new Point(440, 260);

    private final StudySession session;
    private final Sourced element;
    private Text text;

    /** The note of an element of the study of a session. */
    public NoteDialog(Shell parent, StudySession session, Sourced element) {
        super(parent, NLS.bind(Messages.Note_title, ElementNames.withKind(element)), SIZE);
        this.session = session;
        this.element = element;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        text = new Text(area, SWT.MULTI | SWT.WRAP | SWT.V_SCROLL | SWT.BORDER);
        text.setText(element.getNote() == null ? "" : element.getNote());
        text.setToolTipText(Messages.Note_tip);
        text.selectAll();
        text.addListener(SWT.Traverse, this::closeByKey);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(text);
        return area;
    }

    /** Enter makes a line; with Ctrl it is done. */
    private void closeByKey(Event event) {
        if (event.detail == SWT.TRAVERSE_RETURN && (event.stateMask & SWT.MOD1) != 0) {
            event.doit = false;
            buttonPressed(IDialogConstants.OK_ID);
        }
    }

    @Override
    protected void okPressed() {
        String note = text.getText().strip();
        String before = element.getNote() == null ? "" : element.getNote();
        if (!note.equals(before)) {
            SetCommand edit = new SetCommand(session.domain(), element, CommonPackage.Literals.SOURCED__NOTE,
                    note.isEmpty() ? null : note);
            edit.setLabel(NLS.bind(Messages.Note_edit, ElementNames.withKind(element)));
            session.execute(edit);
        }
        super.okPressed();
    }
}
