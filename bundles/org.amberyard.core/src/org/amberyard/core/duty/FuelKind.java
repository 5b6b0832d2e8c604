package org.amberyard.core.duty;

import java.util.Locale;

/**
 * Fuels with their lower heating values per volume, kWh/L.
 *
 * <p>Diesel 128,488, gasoline (E10) 112,114 and propane 84,250 Btu per US gallon: the US alternative fuels data center's
 * fuel property table, from memory; the diesel value agrees with the diesel-equivalent figures of NREL/TP-5400-67698.
 */
public enum FuelKind {
    DIESEL(128_488), GASOLINE(112_114), PROPANE(84_250);

    private static final double KWH_PER_BTU = 1055.05585262 / 3.6e6;
    private static final double L_PER_GALLON = 3.785411784;
    private final double kwhPerL;

    FuelKind(double btuPerGallon) {
        kwhPerL = btuPerGallon * KWH_PER_BTU / L_PER_GALLON;
    }

    /** Its name within a sentence, by which the price of it goes too: diesel, gasoline, propane. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Lower heating value, kWh/L. */
    public double kwhPerL() {
        return kwhPerL;
    }
}
