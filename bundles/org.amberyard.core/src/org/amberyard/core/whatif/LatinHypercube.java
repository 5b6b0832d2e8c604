package org.amberyard.core.whatif;

import java.util.Objects;
import org.amberyard.core.math.Checks;

/**
 * Points of which each coordinate falls once into each of as many equal strata as there are points, at a random place
 * within it, strata of different coordinates paired at random: McKay, Beckman and Conover, "A comparison of three
 * methods for selecting values of input variables in the analysis of output from a computer code", Technometrics 21
 * (1979), 239–245 (from memory).
 *
 * <p>The first points alone are a plain random sample; the evenness comes with the last.
 */
public final class LatinHypercube implements UnitPoints {
    private final CounterRandom within;
    private final Shuffle[] orders;
    private final int draws;

    /**
     * Points of a seed.
     *
     * @param seed any number
     * @param draws number of points, 1 or more
     * @param dimensions coordinates of a point, 1 or more
     */
    public LatinHypercube(long seed, int draws, int dimensions) {
        this.draws = Checks.atLeast("Number of draws", draws, 1);
        this.within = new CounterRandom(seed, RandomUse.WITHIN_STRATUM);
        this.orders = new Shuffle[Checks.atLeast("Number of variables", dimensions, 1)];
        for (int dimension = 0; dimension < dimensions; dimension++) {
            orders[dimension] = new Shuffle(draws, new CounterRandom(seed, RandomUse.ORDER), dimension);
        }
    }

    @Override
    public int dimensions() {
        return orders.length;
    }

    /**
     * A coordinate.
     *
     * @throws IndexOutOfBoundsException when there is no such draw
     */
    @Override
    public double at(int draw, int dimension) {
        int stratum = orders[dimension].at(Objects.checkIndex(draw, draws));
        return (stratum + within.uniform(draw, dimension)) / draws;
    }
}
