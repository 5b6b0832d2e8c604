package org.amberyard.core.variants;

import java.util.List;
import org.amberyard.core.money.BreakEven;

/**
 * What would have to be true: where plans cost as much as the baseline along each uncertain input by itself, all others as they are.
 * Every point is evaluated as the study itself is.
 *
 * @param inputs places of the inputs, those that may take any value of a range
 * @param plans by plan, where it is cheaper along each of the inputs; without a stretch where the input could not be varied; no
 *         inputs for the baseline
 */
public record BreakEvensAlone(List<Integer> inputs, List<List<BreakEven>> plans) {

    public BreakEvensAlone {
        inputs = List.copyOf(inputs);
        plans = plans.stream().map(List::copyOf).toList();
    }
}
