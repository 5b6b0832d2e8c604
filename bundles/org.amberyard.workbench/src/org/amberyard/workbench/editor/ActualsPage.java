package org.amberyard.workbench.editor;

import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.fields.PageSite;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** What came of years that are over, and what buses bring from them. */
final class ActualsPage extends StudyPage {

    ActualsPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm parts = stack(parent);
        rows(parts, Messages.Table_actuals, this::study, StudyPackage.Literals.STUDY__ACTUALS, StudyPackage.Literals.YEAR_ACTUALS);
        rows(parts, Messages.Table_busRecords, this::study, StudyPackage.Literals.STUDY__BUS_RECORDS, FleetPackage.Literals.BUS_RECORD);
        return parts;
    }
}
