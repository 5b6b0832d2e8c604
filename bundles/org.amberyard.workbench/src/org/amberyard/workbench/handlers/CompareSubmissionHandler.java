package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.workbench.documents.SubmissionDialog;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Shell;

/** Asks for the folder of a frozen submission and tells how the study on show differs from it. */
public final class CompareSubmissionHandler extends ResultHandler {

    @Override
    void take(Shell shell, StudySession session, StudyResult result) {
        DirectoryDialog dialog = new DirectoryDialog(shell, SWT.OPEN);
        dialog.setText(Messages.CompareSubmission_title);
        dialog.setMessage(Messages.CompareSubmission_message);
        session.file().ifPresent(f -> dialog.setFilterPath(f.getParent().toString()));
        String folder = dialog.open();
        if (folder != null) {
            new SubmissionDialog(shell, Path.of(folder), session.study(), result).open();
        }
    }
}
