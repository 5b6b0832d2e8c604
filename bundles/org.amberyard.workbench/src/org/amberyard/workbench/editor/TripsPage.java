package org.amberyard.workbench.editor;

import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.fields.PageSite;
import org.eclipse.swt.widgets.Composite;

/** Field and athletic trips. */
final class TripsPage extends StudyPage {

    TripsPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        return rows(parent, Messages.Table_trips, this::study, StudyPackage.Literals.STUDY__TRIPS,
                RoutesPackage.Literals.TRIP).control();
    }
}
