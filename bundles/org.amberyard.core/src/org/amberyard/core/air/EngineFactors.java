package org.amberyard.core.air;

import org.amberyard.core.duty.FuelKind;

/**
 * Exhaust factors of a group of engines: fuel, body types and model years.
 *
 * @param name name of the group
 * @param fuel fuel
 * @param bodyTypes trade letters of the body types; empty for all
 * @param firstModelYear first model year of the engines
 * @param lastModelYear last model year of the engines
 * @param perKm by distance, idling on the route included
 * @param perIdleHour by time of idling in the yard
 */
public record EngineFactors(String name, FuelKind fuel, String bodyTypes, int firstModelYear, int lastModelYear,
        EmissionRates perKm, EmissionRates perIdleHour) {

    /** True when an engine belongs to the group. */
    public boolean holdsFor(FuelKind burnt, String bodyType, int modelYear) {
        return fuel == burnt && modelYear >= firstModelYear && modelYear <= lastModelYear
                && (bodyTypes.isEmpty() || bodyTypes.contains(bodyType));
    }
}
