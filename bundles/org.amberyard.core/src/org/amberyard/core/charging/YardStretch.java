package org.amberyard.core.charging;

import java.util.List;

/**
 * A stretch of days as the yard sees it.
 *
 * @param times how often it comes in the time that is looked at
 * @param grid its steps
 * @param plugIns buses that stand and are to be charged, each bus at one place at a time
 * @param swapHours when a person is there to swap plugs
 */
public record YardStretch(double times, StepGrid grid, List<PlugIn> plugIns, SwapHours swapHours) {

    public YardStretch {
        plugIns = List.copyOf(plugIns);
    }

    /** The same with other plug-ins. */
    public YardStretch with(List<PlugIn> others) {
        return new YardStretch(times, grid, others, swapHours);
    }
}
