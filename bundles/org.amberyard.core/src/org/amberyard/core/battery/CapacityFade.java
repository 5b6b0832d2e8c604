package org.amberyard.core.battery;

/**
 * Loss of capacity, linear in time and in full cycles; the two add up.
 *
 * @param calendarPerYear share of the nominal energy lost per year
 * @param perCycle share of the nominal energy lost per full cycle
 */
public record CapacityFade(double calendarPerYear, double perCycle) {

    /** Present over nominal capacity after years and full cycles; never below zero. */
    public double health(double years, double fullCycles) {
        return Math.max(0, 1 - calendarPerYear * years - perCycle * fullCycles);
    }
}
