package org.amberyard.workbench.measurements;

import java.util.List;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.study.CurveLogs;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;

/** Fits the consumption curve of an electric type that the user chooses, and writes it when the user accepts it. */
public final class FitCurve {
    private FitCurve() {
    }

    /** Shows the fit and waits for the user's answer. */
    public static void ask(Shell shell, StudySession session) {
        List<ElectricType> types = CurveLogs.typesWithLogs(session.study());
        if (types.isEmpty()) {
            MessageDialog.openInformation(shell, Messages.Fit_title, Messages.Fit_noLogs);
            return;
        }
        new FitCurveDialog(shell, session, types).open();
    }
}
