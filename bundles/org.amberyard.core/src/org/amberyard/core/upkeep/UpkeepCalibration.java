package org.amberyard.core.upkeep;

import org.amberyard.core.math.Checks;

/**
 * The factor by which the upkeep of a bus is multiplied so that in the base year its long-run mean costs what was measured.
 *
 * @param factor measured over modelled cost
 */
public record UpkeepCalibration(double factor) {

    /** Nothing measured. */
    public static final UpkeepCalibration NONE = new UpkeepCalibration(1);

    /**
     * Measured over modelled.
     *
     * @param measuredPerKm work orders over distance, money/km, warranty and accident work left out
     * @param modelledPerKm the same by the model; zero where it costs nothing, which no factor can put right
     * @throws IllegalArgumentException when the measured cost is not above zero
     */
    public static UpkeepCalibration of(double measuredPerKm, double modelledPerKm) {
        Checks.positive("Measured upkeep per distance", measuredPerKm);
        return modelledPerKm > 0 ? new UpkeepCalibration(measuredPerKm / modelledPerKm) : NONE;
    }
}
