package org.amberyard.core.consumption;

/** The parts of a consumption curve that logs can tell. */
public enum CurveTerm {
    /** Energy per distance at mild temperatures, kWh/km. */
    BASE,
    /** Rise of the energy per distance as a share of the base per degree below mild, 1/K. */
    COLD_RISE,
    /** Power for heat per degree below mild, kW/K. */
    HEATING,
    /** Power of cooling per degree above its start, kW/K. */
    COOLING
}
