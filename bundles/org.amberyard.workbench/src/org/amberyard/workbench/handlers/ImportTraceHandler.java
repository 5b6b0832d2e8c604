package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import org.amberyard.exchange.TraceImport;
import org.amberyard.workbench.editor.StudyEditor;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;

/** Reads a drive from a file that the user chooses, says what cleaning did, and adds it to the study when that is agreed to. */
public final class ImportTraceHandler extends ImportHandler<TraceImport> {

    @Override
    Words words() {
        return new Words(Messages.Trace_title, Messages.Trace_fileKind, "*.gpx;*.csv", Messages.Trace_failed);
    }

    @Override
    FileReading<TraceImport> reading(Path file, StudyEditor editor) {
        return new TraceReading(file);
    }

    @Override
    void offer(TraceImport imported, Shell shell, StudyEditor editor) {
        TraceAddition addition = new TraceAddition(editor.session(), imported);
        if (MessageDialog.openConfirm(shell, NLS.bind(Messages.Trace_offer, imported.trace().getName()),
                addition.words() + "\n\n" + Messages.Trace_next)) {
            editor.reveal(addition.add(), null);
        }
    }
}
