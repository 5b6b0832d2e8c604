package org.amberyard.core.whatif;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.amberyard.core.math.Checks;
import org.amberyard.core.money.BreakEven;
import org.amberyard.core.money.BreakEvenSearch;

/**
 * Where two plans cost the same along one input, for values of another: each point found by {@link BreakEvenSearch},
 * which gives all changes of sign that its scan tells apart.
 *
 * @param other value of the other input
 * @param at where a plan is cheaper along the first
 */
public record BreakEvenCurve(double other, BreakEven at) {

    /**
     * How the first input is searched.
     *
     * @param low lower end, in the unit of the input
     * @param high upper end, above it
     * @param steps steps of the scan, 1 or more
     * @param tolerance a difference of this size is none, in the unit of the difference
     */
    public record Range(double low, double high, int steps, double tolerance) {
        public Range {
            Checks.finite("Lower end of the range", low);
            Checks.above("Upper end of the range", high, low);
            Checks.atLeast("Steps of the scan", steps, 1);
            Checks.notNegative("Tolerance", tolerance);
        }
    }

    /**
     * A point of the curve for each value of the other input, which may be worked out at the same time.
     *
     * @param difference cost of the plan less that of the other, by the first and the other input; a pure function
     */
    public static List<BreakEvenCurve> of(DoubleBinaryOperator difference, Range range, double... others) {
        return Arrays.stream(others).parallel().mapToObj(other -> new BreakEvenCurve(other, BreakEvenSearch.of(
                value -> difference.applyAsDouble(value, other), range.low(), range.high(), range.steps(),
                range.tolerance())))
                .toList();
    }
}
