package org.amberyard.core.tariff;

import org.amberyard.core.units.MonthNames;

/**
 * When a demand was highest.
 *
 * @param month month, 0 for January
 * @param day kind of day
 * @param step step of the day's load
 */
public record PeakMoment(int month, LoadDay day, int step) {

    /** Demand at the meter, kW. */
    public double kw() {
        return day.kw()[step];
    }

    /** Start of the step, minutes after midnight. */
    public double minute() {
        return step * day.stepMin();
    }

    /** Words such as "at 17:15 on school day, January"; without the time where the load has a single step. */
    public String label() {
        String time = day.kw().length == 1 ? "" : "at " + ClockTime.of((int) minute()) + " ";
        return time + "on " + day.label() + ", " + MonthNames.full(month);
    }
}
