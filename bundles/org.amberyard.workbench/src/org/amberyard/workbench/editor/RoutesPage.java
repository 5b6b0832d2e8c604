package org.amberyard.workbench.editor;

import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** Routes, and the runs of the one in focus. */
final class RoutesPage extends StudyPage {

    RoutesPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm columns = columns(parent);
        FeatureTable routes = rows(columns, Messages.Table_routes, this::study, StudyPackage.Literals.STUDY__ROUTES,
                RoutesPackage.Literals.ROUTE);
        routes.addTool(Messages.Schedule_import, Messages.Schedule_import_tip, () -> MenuCommand.run(MenuCommand.IMPORT_SCHEDULE));
        FeatureTable runs = rows(columns, Messages.Table_runs, routes::selected, RoutesPackage.Literals.ROUTE__RUNS,
                RoutesPackage.Literals.RUN);
        drive(routes, runs);
        columns.setWeights(3, 5);
        return columns;
    }
}
