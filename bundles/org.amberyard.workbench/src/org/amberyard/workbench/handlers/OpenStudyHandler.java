package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import org.amberyard.model.io.StudyFile;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the study file that the command names, or one that the user chooses. */
public final class OpenStudyHandler extends AbstractHandler {

    static final String COMMAND = "org.amberyard.workbench.open";
    static final String FILE = "org.amberyard.workbench.open.file";

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        String named = event.getParameter(FILE);
        String name = named == null ? chosen(window) : named;
        if (name != null) {
            new StudyOpener(window.getActivePage()).open(Path.of(name));
        }
        return null;
    }

    private static String chosen(IWorkbenchWindow window) {
        FileDialog dialog = new FileDialog(window.getShell(), SWT.OPEN);
        dialog.setText(Messages.Open_title);
        dialog.setFilterExtensions(new String[] {"*." + StudyFile.EXTENSION});
        dialog.setFilterNames(new String[] {Messages.Open_fileKind});
        RecentStudies.list().stream().findFirst().map(Path::getParent).ifPresent(p -> dialog.setFilterPath(p.toString()));
        return dialog.open();
    }
}
