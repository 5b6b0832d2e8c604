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
        this.random = new CounterRandom(seed, RandomUse.DRAW);
        this.dimensions = Checks.atLeast("Number of variables", dimensions, 1);
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
