package org.amberyard.core.money;

/** Straight-line loss of value over a life. */
public final class StraightLine {
    private StraightLine() {
    }

    /** Share of a life that is left at an age; 1 when new, 0 from the end of the life. */
    public static double lifeLeft(double ageYears, double lifeYears) {
        return Math.max(0, Math.min(1, 1 - ageYears / lifeYears));
    }
}
