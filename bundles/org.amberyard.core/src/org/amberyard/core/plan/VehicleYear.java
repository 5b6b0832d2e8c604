package org.amberyard.core.plan;

import org.amberyard.core.duty.EnergyUse;

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

    /** The same with the energy at the meter, which is known once the yard is planned. */
    VehicleYear withMeterKwh(double kwh) {
        return new VehicleYear(year, place, vehicle, use, kwh, fullCycles, packCyclesEnd, healthEnd);
    }
}
