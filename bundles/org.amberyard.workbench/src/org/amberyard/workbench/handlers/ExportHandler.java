package org.amberyard.workbench.handlers;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.report.InputRegister;
import org.amberyard.report.ResultFolder;
import org.amberyard.report.ResultTable;
import org.amberyard.study.StudyUnits;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Shell;

/** Writes all results into a folder, in the background. */
public final class ExportHandler extends ResultHandler {

    @Override
    void take(Shell shell, StudySession session, StudyResult result) {
        ResultTable inputs = InputRegister.of(session.study());
        UnitSystem units = StudyUnits.of(session.study());
        Optional<ExportedWhatIf> whatIf = ExportedWhatIf.of(session);
        boolean uncertain = session.study().getWhatIf() != null && !session.study().getWhatIf().getInputs().isEmpty();
        DirectoryDialog dialog = new DirectoryDialog(shell, SWT.SAVE);
        dialog.setText(Messages.Export_title);
        dialog.setMessage(Messages.Export_message);
        session.file().ifPresent(f -> dialog.setFilterPath(f.getParent().toString()));
        String folder = dialog.open();
        if (folder != null) {
            Job.create(Messages.Export_title, (ICoreRunnable) monitor -> attempt(shell, () -> {
                ResultFolder.write(result, inputs, units, Path.of(folder));
                String more = whatIf.isPresent() ? whatIf.get().write(units, Path.of(folder)) : uncertain ? Messages.Export_noWhatIf : "";
                return NLS.bind(Messages.Export_done, folder) + (more.isEmpty() ? "" : "\n\n" + more);
            })).schedule();
        }
    }

    /** Writes files. */
    @FunctionalInterface
    private interface Writing {
        /** What was written, in words. */
        String write() throws IOException;
    }

    private static void attempt(Shell shell, Writing writing) {
        try {
            tell(shell, MessageDialog.INFORMATION, Messages.Export_title, writing.write());
        } catch (IOException e) {
            tell(shell, MessageDialog.ERROR, Messages.Export_failed, e.getMessage());
        }
    }

    private static void tell(Shell shell, int kind, String title, String text) {
        if (!shell.isDisposed()) {
            shell.getDisplay().asyncExec(() -> MessageDialog.open(kind, shell, title, text, SWT.NONE));
        }
    }
}
