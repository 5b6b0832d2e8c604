package org.amberyard.core.whatif;

import org.amberyard.core.math.Checks;

/** Independent random points: plain Monte Carlo. */
public final class RandomPoints implements UnitPoints {
    private final CounterRandom random;
    private final int dimensions;

    /**
     * Points of a seed; there is no end of them.
     *
     * @param seed any number
     * @param dimensions coordinates of a point, 1 or more
     */
    public RandomPoints(long seed, int dimensions) {
        this(new CounterRandom(seed, RandomUse.DRAW), dimensions);
    }

    private RandomPoints(CounterRandom random, int dimensions) {
        this.random = random;
        this.dimensions = Checks.atLeast("Number of variables", dimensions, 1);
    }

    /** Points that have nothing to do with the others of the seed, to be kept out of a fit. */
    public static RandomPoints heldOut(long seed, int dimensions) {
        return new RandomPoints(new CounterRandom(seed, RandomUse.HELD_OUT), dimensions);
    }

    @Override
    public int dimensions() {
        return dimensions;
    }

    @Override
    public double at(int draw, int dimension) {
        return random.uniform(draw, dimension);
    }
}
