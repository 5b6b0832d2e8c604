package org.amberyard.core.air;

import java.util.EnumSet;
import java.util.Set;

/** What emissions go by, and the pollutants that each cause answers for; no pollutant of a source has two causes. */
public enum EmissionCause {
    /** Distance of an engine bus: what depends on engine and exhaust. */
    DISTANCE(Pollutant.CH4, Pollutant.N2O, Pollutant.NOX, Pollutant.PM25, Pollutant.HC, Pollutant.CO),
    /** Hours of idling in the yard; methane and nitrous oxide are published by distance only, which counts them. */
    IDLE_TIME(Pollutant.NOX, Pollutant.PM25, Pollutant.HC, Pollutant.CO),
    /** Fuel burnt in an engine: what depends on the fuel alone. */
    FUEL_BURNT(Pollutant.CO2, Pollutant.SO2),
    /** Fuel burnt, on its way from the well to the tank. */
    FUEL_UPSTREAM(Pollutant.CO2E, Pollutant.NOX, Pollutant.PM25, Pollutant.SO2),
    /** Fuel burnt in a heater. */
    HEATER_FUEL(Pollutant.CO2, Pollutant.CH4, Pollutant.N2O, Pollutant.NOX, Pollutant.PM25, Pollutant.HC, Pollutant.CO,
            Pollutant.SO2),
    /** Energy generated; hydrocarbons and carbon monoxide of power plants are not counted. */
    GENERATION(Pollutant.CO2, Pollutant.CH4, Pollutant.N2O, Pollutant.NOX, Pollutant.PM25, Pollutant.SO2),
    /** Wear of brakes or tyres. */
    WEAR(Pollutant.PM25);

    private final Set<Pollutant> pollutants;

    EmissionCause(Pollutant first, Pollutant... others) {
        this.pollutants = Set.copyOf(EnumSet.of(first, others));
    }

    /** Pollutants that it answers for. */
    public Set<Pollutant> pollutants() {
        return pollutants;
    }
}
