package org.amberyard.core.plan;

/**
 * What a battery beside the building costs.
 *
 * @param pricePerKwh price installed, money of the date of all prices/kWh
 * @param kwPerKwh power over energy, 1/h
 * @param lifeYears life, years
 */
public record BatteryOffer(double pricePerKwh, double kwPerKwh, double lifeYears) {

    /** 800 money/kWh, four hours at full power, 12 years; assumed, no source. */
    public static final BatteryOffer ASSUMED = new BatteryOffer(800, 0.25, 12);
}
