package org.amberyard.study;

import java.util.Optional;
import org.amberyard.core.duty.SpeedTrace;
import org.amberyard.core.trace.GradeProfile;
import org.amberyard.model.meta.NumberSeries;
import org.amberyard.model.routes.DriveTrace;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.impl.AdapterImpl;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Compiles the texts of a drive trace, and remembers the outcome at the trace until one of them changes: thousands of numbers
 * must not be read again for each edit elsewhere.
 */
public final class TraceCompiler extends AdapterImpl {
    private SpeedTrace compiled;

    private TraceCompiler() {
    }

    /**
     * Speed and grade of a trace without error findings.
     *
     * @throws IllegalArgumentException when its numbers do not belong together
     */
    public static SpeedTrace compile(DriveTrace trace) {
        TraceCompiler own = (TraceCompiler) Optional.ofNullable(EcoreUtil.getExistingAdapter(trace, TraceCompiler.class))
                .orElseGet(() -> {
                    TraceCompiler fresh = new TraceCompiler();
                    trace.eAdapters().add(fresh);
                    return fresh;
                });
        if (own.compiled == null) {
            own.compiled = read(trace);
        }
        return own.compiled;
    }

    private static SpeedTrace read(DriveTrace trace) {
        double[] timeS = NumberSeries.parse(trace.getTimesS());
        double[] speedMps = NumberSeries.parse(trace.getSpeedsMps());
        double[] elevationM = NumberSeries.parse(trace.getElevationsM());
        if (timeS.length < 2 || speedMps.length != timeS.length || elevationM.length > 0 && elevationM.length != timeS.length) {
            throw new IllegalArgumentException("Drive trace " + trace.getName() + " has " + timeS.length + " times, "
                    + speedMps.length + " speeds and " + elevationM.length + " elevations");
        }
        return GradeProfile.of(timeS, speedMps, elevationM).trace(timeS, speedMps);
    }

    @Override
    public void notifyChanged(Notification change) {
        compiled = null;
    }

    @Override
    public boolean isAdapterForType(Object type) {
        return type == TraceCompiler.class;
    }
}
