package org.amberyard.core.math;

/** Argument checks of the core; each names the quantity, the value and what is allowed. */
public final class Checks {
    private Checks() {
    }

    /** The value when it is finite and above zero. */
    public static double positive(String quantity, double value) {
        return require(value > 0 && Double.isFinite(value), quantity, value, "above 0");
    }

    /** The value when it is finite and not below zero. */
    public static double notNegative(String quantity, double value) {
        return require(value >= 0 && Double.isFinite(value), quantity, value, "0 or more");
    }

    /** The value when it is finite and above minus one: a rate. */
    public static double rate(String quantity, double value) {
        return require(value > -1 && Double.isFinite(value), quantity, value, "above -100 %");
    }

    /** The value when it is a finite number. */
    public static double finite(String quantity, double value) {
        return require(Double.isFinite(value), quantity, value, "a finite number");
    }

    private static double require(boolean holds, String quantity, double value, String allowed) {
        if (!holds) {
            throw new IllegalArgumentException(quantity + " is " + value + " but must be " + allowed);
        }
        return value;
    }
}
