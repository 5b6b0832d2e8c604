package org.amberyard.workbench.editor;

import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.fields.Columns;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** What was measured on buses: consumption logs with the curves that follow from them, and drives for runs to follow. */
final class MeasurementsPage extends StudyPage {
    MeasurementsPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm parts = stack(parent);
        FeatureTable logs = rows(parts, Messages.Table_logs, this::study, StudyPackage.Literals.STUDY__CONSUMPTION_LOGS,
                FleetPackage.Literals.CONSUMPTION_LOG);
        logs.addTool(Messages.FitCurve, Messages.FitCurve_tip, () -> MenuCommand.run(MenuCommand.FIT_CURVE));
        FeatureTable traces = rows(parts, Messages.Table_traces,
                list(StudyPackage.Literals.STUDY__TRACES, RoutesPackage.Literals.DRIVE_TRACE).importedOnly(),
                Columns.of(RoutesPackage.Literals.DRIVE_TRACE, RoutesPackage.Literals.DRIVE_TRACE__TIMES_S,
                        RoutesPackage.Literals.DRIVE_TRACE__SPEEDS_MPS, RoutesPackage.Literals.DRIVE_TRACE__ELEVATIONS_M),
                TraceColumns.all());
        traces.addTool(Messages.Trace_import, Messages.Trace_import_tip, () -> MenuCommand.run(MenuCommand.IMPORT_TRACE));
        parts.setWeights(5, 3);
        return parts;
    }
}
