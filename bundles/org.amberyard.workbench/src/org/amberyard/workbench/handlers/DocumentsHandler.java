package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.report.papers.StudyFacts;
import org.amberyard.workbench.documents.DocumentsDialog;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;

/** Asks for documents of the results on show and writes them. */
public final class DocumentsHandler extends SessionHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        Shell shell = HandlerUtil.getActiveShellChecked(event);
        if (!OpenEntry.close(event)) {
            return null;
        }
        StudySession session = ActiveSession.here().get().orElseThrow(() -> new ExecutionException(Messages.Export_nothing));
        Optional<StudyResult> result = session.evaluation().current();
        if (result.isEmpty()) {
            MessageDialog.openInformation(shell, Messages.Export_title, Messages.Export_nothing);
            return null;
        }
        Optional<Path> near = session.file().map(Path::getParent);
        new DocumentsDialog(shell, result.get(), StudyFacts.of(session.study()), session.choices(), near).open();
        return null;
    }
}
