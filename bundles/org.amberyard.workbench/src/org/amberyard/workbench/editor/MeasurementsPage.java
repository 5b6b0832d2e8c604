package org.amberyard.workbench.editor;

import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.amberyard.workbench.measurements.FitCurve;
import org.eclipse.swt.widgets.Composite;

/** What was measured on buses, and the consumption curves that follow from it. */
final class MeasurementsPage extends StudyPage {

    MeasurementsPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        FeatureTable logs = rows(parent, Messages.Table_logs, this::study, StudyPackage.Literals.STUDY__CONSUMPTION_LOGS,
                FleetPackage.Literals.CONSUMPTION_LOG);
        logs.addTool(Messages.FitCurve, Messages.FitCurve_tip, () -> FitCurve.ask(parent.getShell(), session()));
        return logs.control();
    }
}
