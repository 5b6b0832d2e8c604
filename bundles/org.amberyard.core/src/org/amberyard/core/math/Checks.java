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

    /** The value when it is finite and above another. */
    public static double above(String quantity, double value, double floor) {
        return require(value > floor && Double.isFinite(value), quantity, value, "above " + floor);
    }

    /** The value when it lies between two others or is one of them. */
    public static double within(String quantity, double value, double low, double high) {
        return require(value >= low && value <= high, quantity, value, "from " + low + " to " + high);
    }

    /** The count when it is not below another. */
    public static int atLeast(String quantity, int count, int least) {
        if (count < least) {
            throw new IllegalArgumentException(quantity + " is " + count + " but must be " + least + " or more");
        }
        return count;
    }

    private static double require(boolean holds, String quantity, double value, String allowed) {
        if (!holds) {
            throw new IllegalArgumentException(quantity + " is " + value + " but must be " + allowed);
        }
        return value;
    }
}
