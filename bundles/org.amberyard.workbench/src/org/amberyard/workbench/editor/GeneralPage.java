package org.amberyard.workbench.editor;

import org.amberyard.model.site.SitePackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.fields.PageSite;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** The study itself: names, settings, site. */
final class GeneralPage extends StudyPage {

    GeneralPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm columns = columns(parent);
        SashForm left = stack(columns);
        one(left, Messages.Table_study, this::study, StudyPackage.Literals.STUDY,
                StudyPackage.Literals.STUDY__FORMAT_VERSION);
        one(left, Messages.Table_site, () -> study().getSite(), SitePackage.Literals.SITE);
        one(columns, Messages.Table_settings, () -> study().getSettings(), StudyPackage.Literals.SETTINGS);
        left.setWeights(9, 7);
        return columns;
    }
}
