package org.amberyard.workbench.editor;

import org.amberyard.model.site.SitePackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** Temperatures by month, and the days on which the runs are driven. */
final class ClimatePage extends StudyPage {

    ClimatePage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm columns = columns(parent);
        FeatureTable months = rows(columns, Messages.Table_climate, () -> study().getSite(), SitePackage.Literals.SITE__CLIMATE,
                SitePackage.Literals.MONTH_CLIMATE);
        months.addTool(Messages.Weather_import, Messages.Weather_import_tip, () -> MenuCommand.run(MenuCommand.IMPORT_WEATHER));
        rows(columns, Messages.Table_calendars, this::study, StudyPackage.Literals.STUDY__CALENDARS,
                SitePackage.Literals.SERVICE_CALENDAR);
        columns.setWeights(11, 10);
        return columns;
    }
}
