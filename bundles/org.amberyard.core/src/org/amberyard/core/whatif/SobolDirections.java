package org.amberyard.core.whatif;

import org.amberyard.core.math.Checks;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * Direction numbers of the Sobol sequence, those of Joe and Kuo, "Constructing Sobol sequences with better
 * two-dimensional projections", SIAM Journal on Scientific Computing 30 (2008), 2635–2654, as Apache Commons Math
 * carries them for up to 1000 dimensions. They are read off its points: the Gray code of the point 2ᵏ⁺¹ − 1 has the bit
 * k alone.
 */
final class SobolDirections {
    /** Most coordinates of a point. */
    static final int MOST_DIMENSIONS = 1000;
    /** Bits of a draw number, and direction numbers of a coordinate. */
    static final int INDEX_BITS = 31;
    private static final double SCALE = 0x1.0p32;

    private SobolDirections() {
    }

    /**
     * Direction numbers, each the 32 bits behind the point.
     *
     * @return by dimension and bit of the Gray code of a draw number
     * @throws IllegalArgumentException when there are no direction numbers for so many dimensions
     */
    static int[][] of(int dimensions) {
        Checks.within("Number of variables of a Sobol sequence", dimensions, 1, MOST_DIMENSIONS);
        SobolSequenceGenerator generator = new SobolSequenceGenerator(dimensions);
        int[][] directions = new int[dimensions][INDEX_BITS];
        for (int bit = 0; bit < INDEX_BITS; bit++) {
            double[] point = generator.skipTo((int) ((1L << (bit + 1)) - 1));
            for (int dimension = 0; dimension < dimensions; dimension++) {
                directions[dimension][bit] = (int) (long) (point[dimension] * SCALE);
            }
        }
        return directions;
    }
}
