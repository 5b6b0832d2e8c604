package org.amberyard.core.duty;

/**
 * Air density from elevation and air temperature.
 *
 * <p>Pressure follows the US Standard Atmosphere 1976 below 11 km (geopotential altitude); density is that pressure over
 * the specific gas constant of dry air times the actual temperature.
 */
public final class StandardAtmosphere {
    /** Specific gas constant of dry air, J/(kg K). */
    public static final double GAS_CONSTANT = 287.05287;
    /** Sea-level temperature of the standard atmosphere, K. */
    public static final double SEA_LEVEL_K = 288.15;

    private static final double SEA_LEVEL_PA = 101_325.0;
    private static final double LAPSE_K_PER_M = 0.0065;
    private static final double GRAVITY = 9.80665;
    private static final double EXPONENT = GRAVITY / (GAS_CONSTANT * LAPSE_K_PER_M);

    private StandardAtmosphere() {
    }

    /** Pressure in Pa at an elevation in metres. */
    public static double pressurePa(double elevationM) {
        return SEA_LEVEL_PA * Math.pow(temperatureK(elevationM) / SEA_LEVEL_K, EXPONENT);
    }

    /** Temperature of the standard atmosphere in K at an elevation in metres. */
    public static double temperatureK(double elevationM) {
        return SEA_LEVEL_K - LAPSE_K_PER_M * elevationM;
    }

    /** Density in kg/m³ at an elevation in metres and an air temperature in °C. */
    public static double densityKgPerM3(double elevationM, double temperatureC) {
        return pressurePa(elevationM) / (GAS_CONSTANT * (temperatureC + 273.15));
    }
}
