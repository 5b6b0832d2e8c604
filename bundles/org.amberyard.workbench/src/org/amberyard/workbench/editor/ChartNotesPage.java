package org.amberyard.workbench.editor;

import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.fields.PageSite;
import org.eclipse.swt.widgets.Composite;

/** Notes on charts, which are made there. */
final class ChartNotesPage extends StudyPage {

    ChartNotesPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        return rows(parent, Messages.Table_chartNotes, this::study, StudyPackage.Literals.STUDY__CHART_NOTES,
                StudyPackage.Literals.CHART_NOTE).control();
    }
}
