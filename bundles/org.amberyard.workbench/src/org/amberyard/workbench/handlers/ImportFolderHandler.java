package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.handlers.HandlerUtil;

/** Makes a new study of a folder of CSV files that the user chooses, all or nothing. */
public final class ImportFolderHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        Shell shell = HandlerUtil.getActiveShellChecked(event);
        DirectoryDialog dialog = new DirectoryDialog(shell);
        dialog.setText(Messages.Folder_title);
        dialog.setMessage(Messages.Folder_message);
        String name = dialog.open();
        if (name != null) {
            read(Path.of(name), HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage());
        }
        return null;
    }

    /** Reads a folder in the background, then opens the study that it holds or says everything that is wrong with it. */
    public static void read(Path folder, IWorkbenchPage page) {
        Shell shell = page.getWorkbenchWindow().getShell();
        FolderReading reading = new FolderReading(folder);
        reading.readThen(shell, () -> tell(reading, page));
    }

    private static void tell(FolderReading reading, IWorkbenchPage page) {
        Shell shell = page.getWorkbenchWindow().getShell();
        reading.refusal().ifPresent(e -> MessageDialog.openError(shell, Messages.Folder_failed, Problems.of(e)));
        reading.imported().ifPresent(new StudyOpener(page)::openNew);
    }
}
