package org.amberyard.core.whatif;

/**
 * Points of the Sobol sequence, which fill the cube more evenly than random ones do; scrambled so that each of them by
 * itself is evenly random, and a mean over them is right on average.
 *
 * <p>Scrambling is that of Matoušek, "On the L2-discrepancy for anchored boxes", Journal of Complexity 14 (1998),
 * 527–556 (from memory): the digits of each coordinate are multiplied by a random lower triangular matrix of bits and
 * shifted by random bits. It keeps the evenness of the sequence and costs nothing by draw, because the matrix goes into
 * the direction numbers. Numbers of draws that are powers of two give the most even points. Up to 1000 coordinates and
 * 2³¹ draws.
 */
public final class SobolPoints implements UnitPoints {
    private static final double STEP = 0x1.0p-32;
    private static final int BITS = 32;

    private final int[][] directions;
    private final int[] shifts;

    private SobolPoints(int[][] directions, int[] shifts) {
        this.directions = directions;
        this.shifts = shifts;
    }

    /**
     * The sequence as it is, moved by 2⁻³³ to keep off 0.
     *
     * @param dimensions coordinates of a point, 1 to 1000
     */
    public static SobolPoints plain(int dimensions) {
        return new SobolPoints(SobolDirections.of(dimensions), new int[dimensions]);
    }

    /**
     * The sequence scrambled by a seed.
     *
     * @param seed any number
     * @param dimensions coordinates of a point, 1 to 1000
     */
    public static SobolPoints scrambled(long seed, int dimensions) {
        int[][] directions = SobolDirections.of(dimensions);
        int[] shifts = new int[dimensions];
        CounterRandom random = new CounterRandom(seed, RandomUse.SCRAMBLE);
        for (int dimension = 0; dimension < dimensions; dimension++) {
            int[] rows = rows(random, dimension);
            for (int bit = 0; bit < directions[dimension].length; bit++) {
                directions[dimension][bit] = times(rows, directions[dimension][bit]);
            }
            shifts[dimension] = (int) random.bits(BITS, dimension);
        }
        return new SobolPoints(directions, shifts);
    }

    /** A row for each digit, the first digit the highest bit: random on the digits before it, one on itself. */
    private static int[] rows(CounterRandom random, int dimension) {
        int[] rows = new int[BITS];
        for (int digit = 0; digit < BITS; digit++) {
            int itself = 1 << (BITS - 1 - digit);
            int before = digit == 0 ? 0 : -1 << (BITS - digit);
            rows[digit] = ((int) random.bits(digit, dimension) & before) | itself;
        }
        return rows;
    }

    private static int times(int[] rows, int digits) {
        int product = 0;
        for (int row : rows) {
            product = (product << 1) | (Integer.bitCount(row & digits) & 1);
        }
        return product;
    }

    @Override
    public int dimensions() {
        return directions.length;
    }

    @Override
    public double at(int draw, int dimension) {
        int digits = shifts[dimension];
        int[] direction = directions[dimension];
        for (int gray = draw ^ (draw >>> 1); gray != 0; gray &= gray - 1) {
            digits ^= direction[Integer.numberOfTrailingZeros(gray)];
        }
        return (Integer.toUnsignedLong(digits) + 0.5) * STEP;
    }
}
