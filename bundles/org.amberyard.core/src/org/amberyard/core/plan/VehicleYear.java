package org.amberyard.core.plan;

import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.why.Derivation;

/**
 * One place in the fleet in one year.
 *
 * @param year year, counted from the base year
 * @param place place in the fleet
 * @param vehicle the bus at the start of the year
 * @param use what its driving took, yard idling included
 * @param meterKwh energy at the meter, kWh
 * @param fullCycles full cycles of the year
 * @param packCyclesEnd full cycles of the pack at the end of the year
 * @param healthEnd present over nominal capacity at the end of the year; 1 for an engine bus
 */
public record VehicleYear(int year, int place, Vehicle vehicle, EnergyUse use, double meterKwh, double fullCycles,
        double packCyclesEnd, double healthEnd) {

    /** How a fuel or energy of the year comes about: its mean over the distance times the distance. */
    Derivation whyDistance(double amount, String name, String unit) {
        Derivation km = Derivation.of("distance of " + vehicle.unit(), use.km(), "km",
                "days of each run of its route times its length, other distance and days as a spare");
        String of = name + " of " + vehicle.unit();
        return use.km() <= 0 ? Derivation.of(of, amount, unit, "engine idling in the yard")
                : Derivation.product(of, unit, km, Derivation.of(name + " over distance", amount / use.km(), unit + "/km",
                        "driven second by second on its runs in the weather of each month, with idling and its measured economy"));
    }

    /** The same with the energy at the meter, which is known once the yard is planned. */
    VehicleYear withMeterKwh(double kwh) {
        return new VehicleYear(year, place, vehicle, use, kwh, fullCycles, packCyclesEnd, healthEnd);
    }
}
