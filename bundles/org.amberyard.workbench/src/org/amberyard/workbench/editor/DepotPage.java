package org.amberyard.workbench.editor;

import org.amberyard.model.depot.DepotPackage;
import org.amberyard.workbench.fields.PageSite;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** The yard's electric service and tariff, the ports and works that can be bought. */
final class DepotPage extends StudyPage {

    DepotPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm columns = columns(parent);
        one(columns, Messages.Table_depot, () -> study().getDepot(), DepotPackage.Literals.DEPOT);
        one(columns, Messages.Table_tariff, () -> study().getDepot().getTariff(), DepotPackage.Literals.FLAT_TARIFF);
        SashForm right = stack(columns);
        rows(right, Messages.Table_ports, () -> study().getDepot(), DepotPackage.Literals.DEPOT__PORT_TYPES,
                DepotPackage.Literals.PORT_TYPE);
        rows(right, Messages.Table_works, () -> study().getDepot(), DepotPackage.Literals.DEPOT__WORKS,
                DepotPackage.Literals.SITE_WORK);
        columns.setWeights(29, 32, 45);
        return columns;
    }
}
