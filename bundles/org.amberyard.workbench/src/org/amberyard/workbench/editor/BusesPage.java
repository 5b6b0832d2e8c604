package org.amberyard.workbench.editor;

import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.fields.PageSite;
import org.eclipse.swt.widgets.Composite;

/** The buses that the district has. */
final class BusesPage extends StudyPage {

    BusesPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        return rows(parent, Messages.Table_buses, this::study, StudyPackage.Literals.STUDY__BUSES,
                FleetPackage.Literals.BUS).control();
    }
}
