package org.amberyard.core.duty;

/**
 * Rolling resistance of tyres by air temperature. Coefficients are rated at 25 °C and fall by 0.6 % per degree of warming: the
 * temperature correction of ISO 28580 for truck and bus tyres of high load index, from memory. The standard corrects within
 * 20 to 30 °C; wider use is common practice, no source, and is bounded here.
 */
public final class RollingResistance {
    private static final double RATED_C = 25;
    private static final double PER_K = 0.006;
    private static final double COLDEST_C = -30;
    private static final double WARMEST_C = 45;

    private RollingResistance() {
    }

    /** The coefficient at an air temperature for one rated at 25 °C. */
    public static double at(double rated, double airC) {
        double within = Math.max(COLDEST_C, Math.min(WARMEST_C, airC));
        return rated * (1 + PER_K * (RATED_C - within));
    }
}
