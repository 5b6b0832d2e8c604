package org.amberyard.workbench.handlers;

import java.nio.file.Files;
import java.nio.file.Path;
import org.amberyard.model.io.StudyFile;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPage;

/** Opens studies that are dropped onto the window, and makes studies of folders of CSV files. */
public final class FileDrop extends DropTargetAdapter {
    private final IWorkbenchPage page;

    /** A listener that opens studies in a page. */
    public FileDrop(IWorkbenchPage page) {
        this.page = page;
    }

    /** Lets a window take what is dropped onto it. */
    public static void hook(Shell shell, IWorkbenchPage page) {
        DropTarget target = new DropTarget(shell, DND.DROP_COPY | DND.DROP_MOVE | DND.DROP_DEFAULT);
        target.setTransfer(new Transfer[] {FileTransfer.getInstance()});
        target.addDropListener(new FileDrop(page));
    }

    /** The file stays where it is, whatever the other program meant to do with it. */
    @Override
    public void dragEnter(DropTargetEvent event) {
        event.detail = (event.operations & DND.DROP_COPY) == 0 ? DND.DROP_NONE : DND.DROP_COPY;
    }

    @Override
    public void drop(DropTargetEvent event) {
        if (event.data instanceof String[] names) {
            for (String name : names) {
                open(Path.of(name));
            }
        }
    }

    /** Opens a study file, makes a study of a folder, and says so of anything else. */
    public void open(Path dropped) {
        if (Files.isDirectory(dropped)) {
            ImportFolderHandler.read(dropped, page);
        } else if (dropped.toString().endsWith("." + StudyFile.EXTENSION)) {
            new StudyOpener(page).open(dropped);
        } else {
            MessageDialog.openInformation(page.getWorkbenchWindow().getShell(), Messages.Drop_title,
                    NLS.bind(Messages.Drop_unknown, dropped.getFileName()));
        }
    }
}
