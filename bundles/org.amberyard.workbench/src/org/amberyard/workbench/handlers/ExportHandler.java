package org.amberyard.workbench.handlers;

import java.io.IOException;
import java.nio.file.Path;
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
        DirectoryDialog dialog = new DirectoryDialog(shell, SWT.SAVE);
        dialog.setText(Messages.Export_title);
        dialog.setMessage(Messages.Export_message);
        session.file().ifPresent(f -> dialog.setFilterPath(f.getParent().toString()));
        String folder = dialog.open();
        if (folder != null) {
            Job.create(Messages.Export_title, (ICoreRunnable) monitor -> write(shell, result, inputs, units, Path.of(folder)))
                    .schedule();
        }
    }

    private static void write(Shell shell, StudyResult result, ResultTable inputs, UnitSystem units, Path folder) {
        String title = Messages.Export_title;
        try {
            ResultFolder.write(result, inputs, units, folder);
            tell(shell, MessageDialog.INFORMATION, title, NLS.bind(Messages.Export_done, folder));
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
