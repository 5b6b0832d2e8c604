package org.amberyard.core.charging;

import org.amberyard.core.math.Checks;

/**
 * Steps of a stretch of days. The end of the stretch joins its start.
 *
 * @param steps number of steps
 * @param stepMin length of a step, minutes
 */
public record StepGrid(int steps, double stepMin) {
    private static final double DAY_MIN = 1440;

    public StepGrid {
        Checks.positive("Number of steps", steps);
        Checks.positive("Step (min)", stepMin);
    }

    /** Whole days in steps of a length that divides the hour. */
    public static StepGrid ofDays(int days, int stepMin) {
        return new StepGrid((int) Math.round(days * DAY_MIN / stepMin), stepMin);
    }

    /** Length of the stretch, minutes. */
    public double lengthMin() {
        return steps * stepMin;
    }

    /** Length of a step, h. */
    public double stepHours() {
        return stepMin / 60;
    }

    /** The step of a running number, which may lie in another turn of the stretch. */
    public int wrapped(int running) {
        return Math.floorMod(running, steps);
    }

    /** The step after one; the first after the last. */
    public int next(int step) {
        return step + 1 < steps ? step + 1 : 0;
    }
}
