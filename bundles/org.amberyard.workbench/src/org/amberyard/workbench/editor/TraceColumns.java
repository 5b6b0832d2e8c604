package org.amberyard.workbench.editor;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.amberyard.core.trace.DriveStatistics;
import org.amberyard.core.units.Unit;
import org.amberyard.model.routes.DriveTrace;
import org.amberyard.study.TraceCompiler;
import org.amberyard.workbench.fields.ComputedColumn;
import org.amberyard.workbench.fields.ComputedFigure;
import org.eclipse.emf.ecore.EObject;

/** What is computed from a drive trace and shown beside it. */
final class TraceColumns {

    private TraceColumns() {
    }

    static List<ComputedColumn> all() {
        return List.of(
                column(Messages.Trace_length, Messages.Trace_length_tip, Unit.KILOMETRE, 2, d -> d.lengthM() / 1000),
                column(Messages.Trace_duration, Messages.Trace_duration_tip, Unit.MINUTE, 1, d -> d.durationS() / 60),
                column(Messages.Trace_meanSpeed, Messages.Trace_meanSpeed_tip, Unit.KM_PER_HOUR, 1, d -> d.meanSpeedMps() * 3.6),
                column(Messages.Trace_stops, Messages.Trace_stops_tip, Unit.COUNT, 0, DriveStatistics::stops),
                column(Messages.Trace_climb, Messages.Trace_climb_tip, Unit.METRE, 0, DriveStatistics::climbM));
    }

    private static ComputedColumn column(String label, String meaning, Unit unit, int decimals,
            ToDoubleFunction<DriveStatistics> figure) {
        return new ComputedFigure(label, meaning, unit, decimals, trace -> figure(trace, figure));
    }

    /** A damaged trace is named among the findings and has no figures. */
    private static double figure(EObject trace, ToDoubleFunction<DriveStatistics> figure) {
        try {
            return figure.applyAsDouble(DriveStatistics.of(TraceCompiler.compile((DriveTrace) trace)));
        } catch (IllegalArgumentException damaged) {
            return Double.NaN;
        }
    }
}
