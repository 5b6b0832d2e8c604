package org.amberyard.workbench.measurements;

import org.amberyard.model.meta.ElementNames;
import org.amberyard.study.CurveFitting;
import org.amberyard.study.CurveWriter;
import org.eclipse.emf.edit.command.ChangeCommand;
import org.eclipse.osgi.util.NLS;

/** Writes a fitted curve into its type; can be undone as one step. */
final class WriteCurve extends ChangeCommand {

    private final CurveFitting fitting;

    WriteCurve(CurveFitting fitting) {
        super(fitting.type());
        this.fitting = fitting;
        setLabel(NLS.bind(Messages.Fit_command, ElementNames.of(fitting.type())));
    }

    @Override
    protected void doExecute() {
        CurveWriter.write(fitting);
    }
}
