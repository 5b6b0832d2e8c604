package org.amberyard.core.money;

/** Straight-line loss of value over a life. */
public final class StraightLine {
    private StraightLine() {
    }

    /** Share of a life that is left at an age; 1 when new, 0 from the end of the life. */
    public static double lifeLeft(double ageYears, double lifeYears) {
        return Math.max(0, Math.min(1, 1 - ageYears / lifeYears));
    }

    /** Value at an age of a thing that falls from a price to an end value over its life and stays there. */
    public static double value(double price, double endValue, double ageYears, double lifeYears) {
        return endValue + (price - endValue) * lifeLeft(ageYears, lifeYears);
    }
}
