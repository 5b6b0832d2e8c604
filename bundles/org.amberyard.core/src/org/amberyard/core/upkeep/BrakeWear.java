package org.amberyard.core.upkeep;

import org.amberyard.core.math.Checks;

/**
 * Life of a set of brake linings by the energy that they turn to heat: wear volume is proportional to friction work (Archard's
 * law of wear). Braking that a motor takes back wears nothing, so an electric bus's linings last longer.
 *
 * @param liningKwh energy that one set of linings of the whole bus takes, kWh; infinite for a task that has no linings
 */
public record BrakeWear(double liningKwh) {

    /** No linings. */
    public static final BrakeWear NONE = new BrakeWear(Double.POSITIVE_INFINITY);

    /** @throws IllegalArgumentException when the energy is not above zero */
    public BrakeWear {
        if (liningKwh != Double.POSITIVE_INFINITY) {
            Checks.positive("Energy per set of linings", liningKwh);
        }
    }

    /** Sets used up by an amount of friction energy. */
    public double sets(double frictionKwh) {
        return frictionKwh / liningKwh;
    }
}
