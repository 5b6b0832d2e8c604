package org.amberyard.core.plan;

import java.util.OptionalDouble;
import org.amberyard.core.upkeep.UpkeepRate;

/**
 * Prices and life of a vehicle type, base-date money.
 *
 * @param purchase price of a new bus
 * @param lifeYears age at which the rule replaces it
 * @param lifeKm odometer at which the rule replaces it, km
 * @param spareExtraYears years beyond that age that a spare or activity bus is kept
 * @param valueAtRetirement resale value from that age on
 * @param upkeep upkeep per distance
 * @param registrationPerYear registration and fees per year
 * @param fuelFiredHeater price to fit a fuel-fired heater, if one is offered
 * @param packs what replacing a pack costs beside the pack itself
 */
public record VehiclePrices(double purchase, double lifeYears, double lifeKm, double spareExtraYears,
        double valueAtRetirement, UpkeepRate upkeep, double registrationPerYear,
        OptionalDouble fuelFiredHeater, PackPrices packs) {

    /** The same life and upkeep at the prices of another. */
    VehiclePrices at(VehiclePrices others) {
        return new VehiclePrices(others.purchase, lifeYears, lifeKm, spareExtraYears, others.valueAtRetirement, upkeep,
                others.registrationPerYear, others.fuelFiredHeater, packs.at(others.packs));
    }

    /** Resale value from retirement age on, base-date money; never above the price of a new bus. */
    public double endValue() {
        return Math.min(purchase, valueAtRetirement);
    }

    /** Years until the rule replaces a bus that goes on as it has driven. */
    public double yearsLeft(double ageYears, double odometerKm, double kmPerYear, Role role) {
        double byAge = lifeYears - ageYears;
        if (role != Role.ROUTE) {
            return byAge + spareExtraYears;
        }
        return kmPerYear > 0 ? Math.min(byAge, (lifeKm - odometerKm) / kmPerYear) : byAge;
    }

    /** True when the rule replaces a bus of an age and odometer in a role; spares and activity buses are kept by age alone. */
    public boolean due(double ageYears, double odometerKm, Role role) {
        return role == Role.ROUTE ? ageYears >= lifeYears || odometerKm >= lifeKm
                : ageYears >= lifeYears + spareExtraYears;
    }
}
