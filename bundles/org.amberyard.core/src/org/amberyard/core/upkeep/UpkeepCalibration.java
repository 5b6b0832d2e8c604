package org.amberyard.core.upkeep;

import org.amberyard.core.math.Checks;

/**
 * Upkeep of the buses of one vehicle type by their work orders beside that of the model, in the base year. Buses are pooled,
 * because a year of work orders of one bus is luck: one engine repair doubles it.
 *
 * @param buses buses that were measured
 * @param km their distance in the base year, km
 * @param modelled what the model says that they cost in a year in the long run, base-date money
 * @param measured what they cost by their work orders, warranty and accident work left out, base-date money
 */
public record UpkeepCalibration(int buses, double km, double modelled, double measured) {
    /** Nothing measured. */
    public static final UpkeepCalibration NONE = new UpkeepCalibration(0, 0, 0, 0);

    /**
     * One bus.
     *
     * @throws IllegalArgumentException when the measured cost is not above zero
     */
    public static UpkeepCalibration of(double km, double modelled, double measuredPerKm) {
        return new UpkeepCalibration(1, km, modelled, Checks.positive("Measured upkeep per distance", measuredPerKm) * km);
    }

    /**
     * What earlier work orders said of a type.
     *
     * @throws IllegalArgumentException when the factor is not above zero
     */
    public static UpkeepCalibration ofEarlier(double factor) {
        return new UpkeepCalibration(0, 0, 1, Checks.positive("Measured over modelled upkeep", factor));
    }

    /** These buses and others. */
    public UpkeepCalibration plus(UpkeepCalibration o) {
        return new UpkeepCalibration(buses + o.buses, km + o.km, modelled + o.modelled, measured + o.measured);
    }

    /**
     * Measured over modelled cost, by which upkeep of the type is multiplied; 1 where nothing was measured, nothing was driven,
     * or the model says that upkeep costs nothing, which no factor can put right.
     */
    public double factor() {
        return measured > 0 && modelled > 0 ? measured / modelled : 1;
    }
}
