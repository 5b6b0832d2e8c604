package org.amberyard.charts;

import java.text.FieldPosition;

/** Writes minutes after midnight as a clock: {@code 6:05}; beyond a day the clock starts again. */
final class ClockTickFormat extends AxisFormat {
    private static final long serialVersionUID = 1L;
    private static final int DAY_MIN = 1440;

    /** The clock at a minute, rounded to the whole minute. */
    static String clock(double minute) {
        long whole = Math.floorMod(Math.round(minute), (long) DAY_MIN);
        return whole / 60 + ":" + (whole % 60 < 10 ? "0" : "") + whole % 60;
    }

    @Override
    public StringBuffer format(double number, StringBuffer to, FieldPosition position) {
        return to.append(clock(number));
    }
}
