package org.amberyard.core.upkeep;

/**
 * Upkeep per distance that rises in a straight line with the age of the bus.
 *
 * @param newPerKm cost per distance in the first year of service, money/km
 * @param risePerKmYear yearly rise, money/km per year
 */
public record UpkeepRate(double newPerKm, double risePerKmYear) {

    /** Cost of a distance at an age in whole years (0 in the first year of service), in constant money. */
    public double cost(double km, double ageYears) {
        return km * (newPerKm + risePerKmYear * ageYears);
    }
}
