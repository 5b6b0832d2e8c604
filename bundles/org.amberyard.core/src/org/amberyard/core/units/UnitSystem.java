package org.amberyard.core.units;

/** The unit systems in which figures are shown; the core itself always computes in the metric units of {@link Unit}. */
public enum UnitSystem {
    /** US customary: miles, degrees Fahrenheit, pounds, gallons. */
    US,
    /** Metric: kilometres, degrees Celsius, kilograms, litres. */
    METRIC
}
