package org.amberyard.core.tariff;

import org.amberyard.core.math.Checks;

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

    /**
     * @throws IllegalArgumentException when the number of days is below zero or the load has no step
     */
    public LoadDay {
        Checks.notNegative("number of days like " + label, days);
        if (kw.length == 0) {
            throw new IllegalArgumentException("load of " + label + " has no steps but must have at least one");
        }
    }

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
