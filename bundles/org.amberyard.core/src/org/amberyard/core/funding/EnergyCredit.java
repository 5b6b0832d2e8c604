package org.amberyard.core.funding;

import org.amberyard.core.money.PricePath;

/**
 * Revenue from low-carbon fuel credits: an amount for each kWh at the meter that charges buses.
 *
 * @param name name
 * @param firstYear first year of the study in which it is earned
 * @param lastYear last year of the study in which it is earned
 * @param perKwh base-date price, money/kWh
 * @param path path of the price
 */
public record EnergyCredit(String name, int firstYear, int lastYear, double perKwh, PricePath path) {

    /** True when it is earned in a year of the study. */
    public boolean paysIn(int year) {
        return year >= firstYear && year <= lastYear;
    }
}
