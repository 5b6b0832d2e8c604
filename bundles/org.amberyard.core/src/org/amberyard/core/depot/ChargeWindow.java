package org.amberyard.core.depot;

/**
 * Hours of the night in which the buses are charged; may run over midnight.
 *
 * @param startMin start, minutes after midnight
 * @param endMin end, minutes after midnight; the next day's when not after the start
 */
public record ChargeWindow(double startMin, double endMin) {
    private static final double DAY_MIN = 1440;

    /** Length in hours; a whole day when start and end are the same. */
    public double hours() {
        double length = ((endMin - startMin) % DAY_MIN + DAY_MIN) % DAY_MIN;
        return (length == 0 ? DAY_MIN : length) / 60;
    }

    /** Hours of the window between two times, h; minutes after midnight, those beyond 1,440 on later days. */
    public double hoursWithin(double fromMin, double toMin) {
        double minutes = 0;
        for (double day = Math.floor(fromMin / DAY_MIN) - 1; day * DAY_MIN < toMin; day++) {
            double opens = startMin + day * DAY_MIN;
            minutes += Math.max(0, Math.min(toMin, opens + hours() * 60) - Math.max(fromMin, opens));
        }
        return minutes / 60;
    }

    /** Demand when an energy at the meter is spread evenly over the window, kW. */
    public double spreadKw(double meterKwh) {
        return meterKwh / hours();
    }
}
