package org.amberyard.core.air;

import org.amberyard.core.math.Checks;

/**
 * An emission factor.
 *
 * @param value mass by what causes it
 * @param unit its unit
 * @param origin where it comes from
 */
public record Factor(double value, FactorUnit unit, FactorOrigin origin) {

    /** @throws IllegalArgumentException when the value is not finite or below zero */
    public Factor {
        Checks.notNegative("Emission factor " + origin.input().field(), value);
    }

    /** Mass, kg, for an amount of what causes it. */
    public double kg(double activity) {
        return activity * value * unit.kg();
    }

    /** True when figures that rest on it may not be submitted. */
    public boolean placeholder() {
        return origin.quality().isPlaceholder();
    }

    /** The same factor multiplied. */
    Factor times(double by) {
        return new Factor(value * by, unit, origin);
    }

    /** On the straight line to another; it is no better than the worse of the two. */
    Factor towards(Factor other, double share) {
        return new Factor(value + share * (other.value - value), unit,
                !placeholder() && other.placeholder() ? other.origin : origin);
    }
}
