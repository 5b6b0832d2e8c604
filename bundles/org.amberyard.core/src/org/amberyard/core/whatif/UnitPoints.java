package org.amberyard.core.whatif;

/**
 * Points of a unit cube, spread evenly in it: draws of variables before their distributions are put in. A coordinate is
 * a function of its numbers alone, so that draws may be asked for in any order and on any thread.
 */
public interface UnitPoints {

    /** Number of coordinates of a point. */
    int dimensions();

    /**
     * A coordinate, above 0 and below 1.
     *
     * @param draw number of the point from 0
     * @param dimension number of the coordinate from 0
     */
    double at(int draw, int dimension);
}
