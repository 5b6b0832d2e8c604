package org.amberyard.core.consumption;

/**
 * Where the true value lies with a stated confidence.
 *
 * @param low lower end
 * @param high upper end
 */
public record Interval(double low, double high) {

    /** The interval that reaches equally far to both sides of a value. */
    static Interval around(double value, double reach) {
        return new Interval(value - reach, value + reach);
    }

    /** True when a value lies within, the ends included. */
    public boolean contains(double value) {
        return value >= low && value <= high;
    }
}
