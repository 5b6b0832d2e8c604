package org.amberyard.core.money;

import java.util.Arrays;

/**
 * Time after which a plan's cumulative saving never falls below zero again within the study, found by straight lines
 * between the points in time.
 *
 * @param outcome whether and how it pays back
 * @param years time from the base date; zero at once, NaN when there is none
 */
public record Payback(Outcome outcome, double years) {

    /** Kinds of outcome. */
    public enum Outcome {
        /** The plans cost the same at every point in time. */
        NO_DIFFERENCE,
        /** The saving is never negative. */
        AT_ONCE,
        /** It turns positive for good within the study. */
        AFTER,
        /** It is negative at the end of the study. */
        NEVER
    }

    /** Savings nearer to zero than this are none: less than a cent in the sums of a study. */
    private static final double TOLERANCE = 0.005;

    /**
     * Payback of a cumulative saving.
     *
     * @param timeYears points in time, not falling
     * @param saving cumulative saving after the flows at each point
     */
    public static Payback of(double[] timeYears, double[] saving) {
        int last = saving.length - 1;
        if (Arrays.stream(saving).allMatch(s -> Math.abs(s) < TOLERANCE)) {
            return new Payback(Outcome.NO_DIFFERENCE, Double.NaN);
        }
        if (saving[last] < -TOLERANCE) {
            return new Payback(Outcome.NEVER, Double.NaN);
        }
        int i = last;
        while (i >= 0 && saving[i] >= -TOLERANCE) {
            i--;
        }
        if (i < 0) {
            return new Payback(Outcome.AT_ONCE, 0);
        }
        double share = -saving[i] / (saving[i + 1] - saving[i]);
        return new Payback(Outcome.AFTER, timeYears[i] + share * (timeYears[i + 1] - timeYears[i]));
    }
}
