package org.amberyard.workbench.measurements;

import java.util.List;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.routes.EnergyModel;
import org.amberyard.model.routes.Route;
import org.amberyard.study.CurveFitting;
import org.amberyard.study.CurveWriter;
import org.eclipse.emf.edit.command.ChangeCommand;
import org.eclipse.osgi.util.NLS;

/** Writes a fitted curve into its type, and where asked lets routes go by it; can be undone as one step. */
final class WriteCurve extends ChangeCommand {

    private final CurveFitting fitting;
    private final List<Route> routes;

    /** @param routes routes that are to go by consumption curves from now on */
    WriteCurve(CurveFitting fitting, List<Route> routes) {
        super(fitting.study());
        this.fitting = fitting;
        this.routes = List.copyOf(routes);
        String name = ElementNames.of(fitting.type());
        setLabel(routes.isEmpty() ? NLS.bind(Messages.Fit_command, name) : NLS.bind(Messages.Fit_commandUsed, name, routes.size()));
    }

    @Override
    protected void doExecute() {
        CurveWriter.write(fitting);
        routes.forEach(r -> r.setEnergyModel(EnergyModel.CURVE));
    }
}
