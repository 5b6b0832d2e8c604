package org.amberyard.workbench.editor;

import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.fields.Columns;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.amberyard.workbench.measurements.FitCurve;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;

/** What was measured on buses: consumption logs with the curves that follow from them, and drives for runs to follow. */
final class MeasurementsPage extends StudyPage {
    private static final String IMPORT_TRACE = "org.amberyard.workbench.importTrace";

    MeasurementsPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm parts = stack(parent);
        FeatureTable logs = rows(parts, Messages.Table_logs, this::study, StudyPackage.Literals.STUDY__CONSUMPTION_LOGS,
                FleetPackage.Literals.CONSUMPTION_LOG);
        logs.addTool(Messages.FitCurve, Messages.FitCurve_tip, () -> FitCurve.ask(parent.getShell(), session()));
        FeatureTable traces = rows(parts, Messages.Table_traces,
                list(StudyPackage.Literals.STUDY__TRACES, RoutesPackage.Literals.DRIVE_TRACE).importedOnly(),
                Columns.of(RoutesPackage.Literals.DRIVE_TRACE, RoutesPackage.Literals.DRIVE_TRACE__TIMES_S,
                        RoutesPackage.Literals.DRIVE_TRACE__SPEEDS_MPS, RoutesPackage.Literals.DRIVE_TRACE__ELEVATIONS_M),
                TraceColumns.all());
        traces.addTool(Messages.Trace_import, Messages.Trace_import_tip, MeasurementsPage::importTrace);
        parts.setWeights(5, 3);
        return parts;
    }

    private static void importTrace() {
        try {
            PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(IMPORT_TRACE, null);
        } catch (CommandException e) {
            ILog.of(MeasurementsPage.class).error(e.getMessage(), e);
        }
    }
}
