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

    /** Hours of the window between two moments, minutes after midnight; beyond 1,440 on the days after. */
    public double hoursWithin(double fromMin, double toMin) {
        double lengthMin = hours() * 60;
        double sumMin = 0;
        for (double start = startMin - DAY_MIN; start < toMin; start += DAY_MIN) {
            sumMin += Math.max(0, Math.min(toMin, start + lengthMin) - Math.max(fromMin, start));
        }
        return sumMin / 60;
    }
}
