package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.workbench.documents.DocumentsDialog;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.swt.widgets.Shell;

/** Asks for documents of the results on show and writes them. */
public final class DocumentsHandler extends ResultHandler {

    @Override
    void take(Shell shell, StudySession session, StudyResult result) {
        Optional<Path> near = session.file().map(Path::getParent);
        new DocumentsDialog(shell, result, session.study(), session.whatIf().upToDate(), session.choices(), near).open();
    }
}
