package org.amberyard.workbench.editor;

import org.amberyard.model.funding.FundingPackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** Programmes that pay, and what the one in focus pays per bus. */
final class FundingPage extends StudyPage {

    FundingPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm columns = columns(parent);
        FeatureTable programmes = rows(columns, Messages.Table_programmes, this::study,
                StudyPackage.Literals.STUDY__PROGRAMMES, FundingPackage.Literals.PROGRAMME);
        FeatureTable awards = rows(columns, Messages.Table_awards, programmes::selected,
                FundingPackage.Literals.PROGRAMME__BUS_AWARDS, FundingPackage.Literals.BUS_AWARD);
        drive(programmes, awards);
        columns.setWeights(5, 3);
        return columns;
    }
}
