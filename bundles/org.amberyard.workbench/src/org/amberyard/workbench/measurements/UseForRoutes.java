package org.amberyard.workbench.measurements;

import java.util.List;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.routes.EnergyModel;
import org.amberyard.model.routes.Route;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** Whether routes of the type's body are to go by consumption curves once the fit is accepted, without which it decides nothing. */
final class UseForRoutes {
    private final Study study;
    private final Button box;
    private List<Route> open = List.of();

    /** @param changed is run when the user says yes or no */
    UseForRoutes(Composite parent, Study study, Runnable changed) {
        this.study = study;
        box = new Button(parent, SWT.CHECK);
        box.setText(Messages.Use_none);
        box.setToolTipText(Messages.Use_tip);
        box.setEnabled(false);
        box.addListener(SWT.Selection, e -> changed.run());
    }

    /** Offers the routes that a type can serve and that go by physics yet. */
    void show(ElectricType type) {
        open = study.getRoutes().stream().filter(r -> r.getBodyType() == type.getBodyType() && r.getEnergyModel() != EnergyModel.CURVE).toList();
        box.setEnabled(!open.isEmpty());
        box.setText(open.isEmpty() ? Messages.Use_none : NLS.bind(Messages.Use_routes, open.size(), ElementNames.of(type)));
        box.getParent().layout();
    }

    /** Routes that are to go by curves; none where the user has not said so. */
    List<Route> routes() {
        return box.getSelection() && box.isEnabled() ? open : List.of();
    }
}
