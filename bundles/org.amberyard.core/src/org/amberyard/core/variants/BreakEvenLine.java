package org.amberyard.core.variants;

import java.util.List;
import org.amberyard.core.whatif.BreakEvenCurve;

/**
 * Where plans cost as much as the baseline along one input, for values of another. Every point is evaluated as the study itself is,
 * also where draws are read off fitted surfaces.
 *
 * @param first place of the input along which is searched
 * @param second place of the other input
 * @param low least value looked at
 * @param high largest value looked at
 * @param plans by plan, a point for each value of the other input; no points for the baseline
 */
public record BreakEvenLine(int first, int second, double low, double high, List<List<BreakEvenCurve>> plans) {

    public BreakEvenLine {
        plans = plans.stream().map(List::copyOf).toList();
    }
}
