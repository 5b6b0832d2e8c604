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
        double lengthMin = grid.lengthMin();
        for (PlugIn stay : plugIns) {
            if (stay.fromMin() >= lengthMin || stay.toMin() - stay.fromMin() > lengthMin) {
                throw new IllegalArgumentException("Bus " + stay.label() + " stands from minute " + stay.fromMin() + " to "
                        + stay.toMin() + ", but the stretch has only " + lengthMin + " minutes");
            }
        }
    }

    /** The same with other plug-ins. */
    public YardStretch with(List<PlugIn> others) {
        return new YardStretch(times, grid, others, swapHours);
    }

    /** The same, coming once. */
    public YardStretch once() {
        return new YardStretch(1, grid, plugIns, swapHours);
    }
}
