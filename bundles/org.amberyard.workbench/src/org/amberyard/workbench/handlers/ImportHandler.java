package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import java.util.Optional;
import org.amberyard.exchange.ImportException;
import org.amberyard.workbench.editor.StudyEditor;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;

/** Reads a file that the user chooses, says what it holds, and adds it to the study when that is agreed to. */
abstract class ImportHandler<T> extends SessionHandler {

    /** Words of the dialogs: title of the choice, kind of file and its endings, title when nothing was imported. */
    record Words(String title, String fileKind, String endings, String failed) {
    }

    abstract Words words();

    /** Reads a file for a study that is open. */
    abstract FileReading<T> reading(Path file, StudyEditor editor);

    /** Asks, and adds what has been read. */
    abstract void offer(T imported, Shell shell, StudyEditor editor);

    @Override
    public final Object execute(ExecutionEvent event) throws ExecutionException {
        Shell shell = HandlerUtil.getActiveShellChecked(event);
        if (OpenEntry.close(event) && HandlerUtil.getActiveEditor(event) instanceof StudyEditor editor) {
            chosen(shell, editor).ifPresent(file -> read(file, editor));
        }
        return null;
    }

    private Optional<Path> chosen(Shell shell, StudyEditor editor) {
        FileDialog dialog = new FileDialog(shell, SWT.OPEN);
        dialog.setText(words().title());
        dialog.setFilterExtensions(new String[] {words().endings(), "*.*"});
        dialog.setFilterNames(new String[] {words().fileKind(), Messages.Import_anyFile});
        editor.session().file().ifPresent(f -> dialog.setFilterPath(f.getParent().toString()));
        return Optional.ofNullable(dialog.open()).map(Path::of);
    }

    private void read(Path file, StudyEditor editor) {
        reading(file, editor).readThen(editor, words().failed(), imported -> offer(imported, editor.getSite().getShell(), editor));
    }

    final void refuse(ImportException refusal, Shell shell) {
        MessageDialog.openError(shell, words().failed(), Problems.of(refusal));
    }
}
