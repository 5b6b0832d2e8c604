package org.amberyard.workbench.handlers;

import org.amberyard.workbench.editor.StudyEditor;
import org.amberyard.workbench.sheets.TableDialog;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows what the table on the clipboard would do to the study, as for the table of a file. */
public final class ImportClipboardHandler extends SessionHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        Shell shell = HandlerUtil.getActiveShellChecked(event);
        if (OpenEntry.close(event) && HandlerUtil.getActiveEditor(event) instanceof StudyEditor editor) {
            offer(text(shell), shell, editor);
        }
        return null;
    }

    private static String text(Shell shell) {
        Clipboard clipboard = new Clipboard(shell.getDisplay());
        try {
            return clipboard.getContents(TextTransfer.getInstance()) instanceof String text ? text : "";
        } finally {
            clipboard.dispose();
        }
    }

    private static void offer(String text, Shell shell, StudyEditor editor) {
        if (text.isBlank()) {
            MessageDialog.openInformation(shell, Messages.Clipboard_title, Messages.Clipboard_empty);
            return;
        }
        new PastedReading(text).readThen(editor, Messages.Table_failed, sheets -> new TableDialog(shell, editor.session(), sheets).open());
    }
}
