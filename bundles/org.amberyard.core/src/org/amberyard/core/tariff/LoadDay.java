package org.amberyard.core.tariff;

/**
 * Metered load of one kind of day of a month, in equal steps from midnight to midnight.
 *
 * @param label what kind of day it is, in words
 * @param dayClass kind of day of the tariff
 * @param days how many days of the month are like it
 * @param kw mean demand of each step at the meter, kW; shared, not to be changed
 */
public record LoadDay(String label, DayClass dayClass, double days, double[] kw) {
    private static final int DAY_MIN = 1440;

    /** Length of a step, minutes. */
    public double stepMin() {
        return (double) DAY_MIN / kw.length;
    }

    /** Energy of one day, kWh. */
    public double kwhPerDay() {
        double sum = 0;
        for (double step : kw) {
            sum += step;
        }
        return sum * stepMin() / 60;
    }
}
