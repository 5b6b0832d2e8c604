package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.exchange.TraceImport;
import org.amberyard.workbench.editor.StudyEditor;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;

/** Reads a drive from a file that the user chooses, says what cleaning did, and adds it to the study when that is agreed to. */
public final class ImportTraceHandler extends SessionHandler {

    private static final int MOST_SHOWN = 8;

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        Shell shell = HandlerUtil.getActiveShellChecked(event);
        if (OpenEntry.close(event) && HandlerUtil.getActiveEditor(event) instanceof StudyEditor editor) {
            chosen(shell, editor).ifPresent(file -> read(file, editor));
        }
        return null;
    }

    private static Optional<Path> chosen(Shell shell, StudyEditor editor) {
        FileDialog dialog = new FileDialog(shell, SWT.OPEN);
        dialog.setText(Messages.Trace_title);
        dialog.setFilterExtensions(new String[] {"*.gpx;*.csv", "*.*"});
        dialog.setFilterNames(new String[] {Messages.Trace_fileKind, Messages.Trace_anyFile});
        editor.session().file().ifPresent(f -> dialog.setFilterPath(f.getParent().toString()));
        return Optional.ofNullable(dialog.open()).map(Path::of);
    }

    private static void read(Path file, StudyEditor editor) {
        Shell shell = editor.getSite().getShell();
        TraceReading reading = new TraceReading(file);
        reading.addJobChangeListener(new JobChangeAdapter() {
            @Override
            public void done(IJobChangeEvent event) {
                if (event.getResult().isOK() && !shell.isDisposed()) {
                    shell.getDisplay().asyncExec(() -> tell(reading, editor));
                }
            }
        });
        reading.schedule();
    }

    /** The study may have been closed while its drive was read. */
    private static void tell(TraceReading reading, StudyEditor editor) {
        if (editor.getSite().getPage().findEditor(editor.getEditorInput()) != editor) {
            return;
        }
        Shell shell = editor.getSite().getShell();
        reading.refusal().ifPresent(e -> MessageDialog.openError(shell, Messages.Trace_failed, problems(e)));
        reading.imported().ifPresent(imported -> offer(imported, shell, editor));
    }

    private static void offer(TraceImport imported, Shell shell, StudyEditor editor) {
        TraceAddition addition = new TraceAddition(editor.session(), imported);
        if (MessageDialog.openConfirm(shell, NLS.bind(Messages.Trace_offer, imported.trace().getName()),
                addition.words() + "\n\n" + Messages.Trace_next)) {
            editor.reveal(addition.add(), null);
        }
    }

    private static String problems(ImportException refusal) {
        List<ImportProblem> problems = refusal.problems();
        StringBuilder text = new StringBuilder();
        problems.stream().limit(MOST_SHOWN).forEach(p -> text.append(p).append('\n'));
        return problems.size() <= MOST_SHOWN ? text.toString()
                : text.append(NLS.bind(Messages.Trace_more, problems.size() - MOST_SHOWN)).toString();
    }
}
