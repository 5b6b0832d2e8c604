package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.List;

/**
 * A time in which a bus charges without a pause, in whole steps cut to its time at the plug.
 *
 * @param fromMin start, minutes counted as in the plug-in
 * @param toMin end, minutes
 */
public record ChargeSpan(double fromMin, double toMin) {
    /** Mean power of a step from which something draws, kW: less is rounding. */
    private static final double LEAST_KW = 0.01;

    /** True for a mean power of a step at which something draws. */
    public static boolean draws(double kw) {
        return kw >= LEAST_KW;
    }

    /** When a bus charges while it is at its plug, in order. */
    public static List<ChargeSpan> of(ChargeSchedule schedule, Plugged plugged) {
        double[] kw = schedule.meterKw()[plugged.place()];
        StepGrid grid = schedule.grid();
        int end = (int) Math.ceil(plugged.toMin() / grid.stepMin());
        List<ChargeSpan> spans = new ArrayList<>();
        int start = -1;
        for (int step = (int) Math.floor(plugged.fromMin() / grid.stepMin()); step <= end; step++) {
            boolean charging = step < end && draws(kw[grid.wrapped(step)]);
            if (charging && start < 0) {
                start = step;
            } else if (!charging && start >= 0) {
                spans.add(new ChargeSpan(Math.max(plugged.fromMin(), start * grid.stepMin()),
                        Math.min(plugged.toMin(), step * grid.stepMin())));
                start = -1;
            }
        }
        return spans;
    }
}
