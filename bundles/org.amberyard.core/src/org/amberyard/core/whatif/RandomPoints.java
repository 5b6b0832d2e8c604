package org.amberyard.core.whatif;

import org.amberyard.core.math.Checks;

/** Independent random points: plain Monte Carlo. */
public final class RandomPoints implements UnitPoints {
    private final CounterRandom random;
    private final int dimensions;
    private final int first;

    /**
     * Points of a seed; there is no end of them.
     *
     * @param seed any number
     * @param dimensions coordinates of a point, 1 or more
     */
    public RandomPoints(long seed, int dimensions) {
        this(new CounterRandom(seed, RandomUse.DRAW), dimensions, 0);
    }

    private RandomPoints(CounterRandom random, int dimensions, int first) {
        this.random = random;
        this.first = first;
        this.dimensions = Checks.atLeast("Number of variables", dimensions, 1);
    }

    /**
     * Points that have nothing to do with the others of the seed, to be kept out of a fit.
     *
     * @param first number of the first of them, those before it being for other fits
     */
    public static RandomPoints heldOut(long seed, int dimensions, int first) {
        return new RandomPoints(new CounterRandom(seed, RandomUse.HELD_OUT), dimensions, first);
    }

    @Override
    public int dimensions() {
        return dimensions;
    }

    @Override
    public double at(int draw, int dimension) {
        return random.uniform(first + draw, dimension);
    }
}
