package org.amberyard.workbench.fields;

import java.util.Objects;
import java.util.Optional;
import org.amberyard.model.common.Sourced;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.look.SizedDialog;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.edit.command.ChangeCommand;
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

/** The note on an element, and the source of one of its fields: read, written anew, or emptied. */
public final class NoteDialog extends SizedDialog {

    private static final Point SIZE = new Point(480, 380);

    private final StudySession session;
    private final Sourced element;
    private final Optional<EStructuralFeature> field;
    private Text text;
    private Optional<SourceForm> source = Optional.empty();

    /**
     * The note of an element of the study of a session.
     *
     * @param field the field whose source can be noted too; empty for the element alone
     */
    public NoteDialog(Shell parent, StudySession session, Sourced element, Optional<EStructuralFeature> field) {
        super(parent, NLS.bind(Messages.Note_title, Words.withKind(element)), SIZE);
        this.session = session;
        this.element = element;
        this.field = field;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        text = new Text(area, SWT.MULTI | SWT.WRAP | SWT.V_SCROLL | SWT.BORDER);
        text.setText(element.getNote() == null ? "" : element.getNote());
        text.setToolTipText(Messages.Note_tip);
        text.selectAll();
        text.addListener(SWT.Traverse, this::traversed);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(text);
        source = field.map(f -> new SourceForm(area, element, f));
        return area;
    }

    /** Enter makes a line; with Ctrl it is done. Tab goes on to the source. */
    private void traversed(Event event) {
        if (event.detail == SWT.TRAVERSE_RETURN && (event.stateMask & SWT.MOD1) != 0) {
            event.doit = false;
            buttonPressed(IDialogConstants.OK_ID);
        } else if (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
            event.doit = true;
        }
    }

    private String note() {
        return text.getText().isBlank() ? null : text.getText().strip();
    }

    @Override
    protected void okPressed() {
        boolean noteChanged = !Objects.equals(note(), element.getNote() == null || element.getNote().isBlank() ? null : element.getNote());
        if (noteChanged || source.filter(SourceForm::isChanged).isPresent()) {
            session.execute(new Noting(noteChanged));
        }
        super.okPressed();
    }

    /** Writes what the dialog holds as one edit. */
    private final class Noting extends ChangeCommand {
        private final boolean noteChanged;

        Noting(boolean noteChanged) {
            super(element);
            this.noteChanged = noteChanged;
            setLabel(NLS.bind(Messages.Note_edit, Words.withKind(element)));
        }

        @Override
        protected void doExecute() {
            if (noteChanged) {
                element.setNote(note());
            }
            source.filter(SourceForm::isChanged).ifPresent(SourceForm::write);
        }
    }
}
