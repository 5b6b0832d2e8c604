package org.amberyard.core.tariff;

import java.util.List;

/**
 * A price on the energy of certain hours. Its blocks count the energy of all its hours in the month; blocks per kW go by the
 * greatest billed demand of the month's demand charges, or by the highest demand where there is none.
 *
 * @param name name on the bill
 * @param rates prices by season, hours and contract year; within a month they must agree on the price
 */
public record EnergyCharge(String name, List<ChargeRate> rates) {

    /**
     * @throws IllegalArgumentException when prices of a month differ
     */
    public EnergyCharge {
        rates = List.copyOf(rates);
        ChargeTerms.requireOnePrice(name, rates);
    }

    /** One price in a period. */
    public static EnergyCharge of(String name, TariffPeriod period, double pricePerKwh) {
        return new EnergyCharge(name, List.of(ChargeRate.of(period, pricePerKwh)));
    }
}
