package org.amberyard.core.upkeep;

import java.util.List;

/**
 * What a year of driving does to a bus.
 *
 * @param km distance, km
 * @param hours time in service, with an engine yard idling included, h
 * @param brakeKwh energy in the friction brakes, kWh; zero where the energy model does not tell it
 * @param tyreKwh work passed on by the tyres, kWh; zero where the energy model does not tell it
 * @param massKg mass of the bus with its average riders, kg
 * @param monthShares share of the distance by month, January first; the sum is 1
 */
public record WearYear(double km, double hours, double brakeKwh, double tyreKwh, double massKg, List<Double> monthShares) {

    /** Months in a year. */
    public static final int MONTHS = 12;

    /** @throws IllegalArgumentException when there are not 12 months */
    public WearYear {
        if (monthShares.size() != MONTHS) {
            throw new IllegalArgumentException("A year of wear has " + monthShares.size() + " months but must have 12");
        }
        monthShares = List.copyOf(monthShares);
    }
}
