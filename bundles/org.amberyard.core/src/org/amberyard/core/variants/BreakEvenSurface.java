package org.amberyard.core.variants;

import java.util.List;
import org.amberyard.core.money.BreakEven;
import org.amberyard.core.whatif.Grid;

/**
 * Where plans cost as much as the baseline along one input, over a grid of two others. Every point is evaluated as the study itself
 * is.
 *
 * @param searched place of the input along which is searched
 * @param first place of the input that runs along the columns
 * @param second place of the input that runs along the rows
 * @param grid values of the two
 * @param low least value looked at
 * @param high largest value looked at
 * @param plans by plan, where it is cheaper in each cell of the grid; no cells for the baseline
 */
public record BreakEvenSurface(int searched, int first, int second, Grid grid, double low, double high, List<List<BreakEven>> plans) {

    public BreakEvenSurface {
        plans = plans.stream().map(List::copyOf).toList();
    }
}
