package org.amberyard.core.funding;

/**
 * What a programme can pay in all to this fleet.
 *
 * @param maxBuses most buses in the whole study
 * @param total most money in the whole study; infinite for no limit
 * @param perYear most money for the purchases of a year; infinite for no limit
 */
public record Budget(int maxBuses, double total, double perYear) {

    /** A budget without an amount. */
    public static Budget ofBuses(int maxBuses) {
        return new Budget(maxBuses, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
    }
}
