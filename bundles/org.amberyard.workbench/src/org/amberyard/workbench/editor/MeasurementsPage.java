package org.amberyard.workbench.editor;

import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.fields.PageSite;
import org.eclipse.swt.widgets.Composite;

/** What was measured on buses. */
final class MeasurementsPage extends StudyPage {

    MeasurementsPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        return rows(parent, Messages.Table_logs, this::study, StudyPackage.Literals.STUDY__CONSUMPTION_LOGS,
                FleetPackage.Literals.CONSUMPTION_LOG).control();
    }
}
