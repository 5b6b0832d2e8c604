package org.amberyard.core.math;

/** What rounding leaves of a zero: numbers so small beside those that they were found from that nothing stands behind them. */
public final class RoundingDust {
    /** Some thousand times the rounding of a double. */
    private static final double SHARE = 1e-12;

    private RoundingDust() {
    }

    /**
     * Zero for a number that is next to nothing beside a scale, else the number itself.
     *
     * @param scale length of the range that the number lies in, or size of the numbers it was found from, in its unit; its sign does not matter
     */
    public static double swept(double number, double scale) {
        return Math.abs(number) <= SHARE * Math.abs(scale) ? 0 : number;
    }
}
