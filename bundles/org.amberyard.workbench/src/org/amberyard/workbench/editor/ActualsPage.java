package org.amberyard.workbench.editor;

import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.fields.PageSite;
import org.eclipse.swt.widgets.Composite;

/** What came of years that are over. */
final class ActualsPage extends StudyPage {

    ActualsPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        return rows(parent, Messages.Table_actuals, this::study, StudyPackage.Literals.STUDY__ACTUALS,
                StudyPackage.Literals.YEAR_ACTUALS).control();
    }
}
