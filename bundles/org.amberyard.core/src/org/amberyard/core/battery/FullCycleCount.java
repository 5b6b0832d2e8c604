package org.amberyard.core.battery;

/**
 * Count of full cycles: energy discharged over nominal energy. Partial cycles add up, so two half cycles are one
 * (common practice, no source). Nominal, not present, energy is the measure throughout the pack's life.
 */
public final class FullCycleCount {
    private FullCycleCount() {
    }

    /**
     * Full cycles in a discharged energy.
     *
     * @param dischargedKwh energy drawn from the pack, kWh
     * @param nominalKwh nominal energy, kWh, positive
     */
    public static double of(double dischargedKwh, double nominalKwh) {
        if (!(nominalKwh > 0)) {
            throw new IllegalArgumentException("Nominal battery energy must be above 0 kWh but is " + nominalKwh);
        }
        return dischargedKwh / nominalKwh;
    }
}
