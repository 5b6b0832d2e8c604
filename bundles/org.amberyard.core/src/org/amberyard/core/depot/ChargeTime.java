package org.amberyard.core.depot;

import org.amberyard.core.math.Checks;

/** Time to charge a battery at a steady power. */
public final class ChargeTime {
    private ChargeTime() {
    }

    /** Power of a single-phase circuit, kW. */
    public static double singlePhaseKw(double volts, double amperes) {
        return volts * amperes / 1000;
    }

    /** Power of a balanced three-phase circuit, kW at unity power factor (kVA in general). */
    public static double threePhaseKw(double lineVolts, double amperes) {
        return Math.sqrt(3) * lineVolts * amperes / 1000;
    }

    /**
     * Hours to store an energy.
     *
     * @param energyKwh energy into the battery, kWh
     * @param powerKw power at the meter, kW, positive
     * @param efficiency energy into the battery over energy at the meter
     */
    public static double hours(double energyKwh, double powerKw, double efficiency) {
        return Checks.notNegative("Energy (kWh)", energyKwh)
                / (Checks.positive("Power (kW)", powerKw) * Checks.positive("Efficiency", efficiency));
    }
}
