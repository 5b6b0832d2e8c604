package org.amberyard.core.whatif;

import org.amberyard.core.money.BreakEven;

/**
 * A point of the curve on which two plans cost the same along one input, for values of another.
 *
 * @param other value of the other input
 * @param at where a plan is cheaper along the first
 */
public record BreakEvenCurve(double other, BreakEven at) {
}
