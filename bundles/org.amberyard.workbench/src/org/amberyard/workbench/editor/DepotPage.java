package org.amberyard.workbench.editor;

import org.amberyard.model.depot.DepotPackage;
import org.amberyard.workbench.fields.PageSite;
import org.amberyard.workbench.fields.Sheets;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** The yard's electric service, the ports, works and upgrades that can be bought. */
final class DepotPage extends StudyPage {

    DepotPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm columns = columns(parent);
        one(columns, Messages.Table_depot, () -> study().getDepot(), DepotPackage.Literals.DEPOT);
        Sheets right = new Sheets(columns);
        right.share(
                rows(right.area(), Messages.Table_ports, () -> study().getDepot(), DepotPackage.Literals.DEPOT__PORT_TYPES,
                        DepotPackage.Literals.PORT_TYPE),
                rows(right.area(), Messages.Table_works, () -> study().getDepot(), DepotPackage.Literals.DEPOT__WORKS,
                        DepotPackage.Literals.SITE_WORK),
                rows(right.area(), Messages.Table_upgrades, () -> study().getDepot(), DepotPackage.Literals.DEPOT__UPGRADES,
                        DepotPackage.Literals.SERVICE_UPGRADE));
        columns.setWeights(36, 64);
        return columns;
    }
}
