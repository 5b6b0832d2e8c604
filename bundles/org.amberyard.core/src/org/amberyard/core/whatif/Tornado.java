package org.amberyard.core.whatif;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What inputs do to a result one at a time, and what is left for their acting together.
 *
 * @param base the result with all inputs at their base
 * @param bars a bar for each input and each group, the widest first; equally wide ones in the order of the plan
 * @param lowInteraction change of the result with all inputs low less the sum of the changes with each of them low
 * @param highInteraction the same with inputs high
 */
public record Tornado(double base, List<Bar> bars, double lowInteraction, double highInteraction) {

    /**
     * One input or group varied.
     *
     * @param input place of the input, or behind all inputs that of the group
     * @param atLow the result with it low
     * @param atHigh the result with it high
     */
    public record Bar(int input, double atLow, double atHigh) {
        /** Difference of the results, 0 or more. */
        public double swing() {
            return Math.abs(atHigh - atLow);
        }
    }

    public Tornado {
        bars = List.copyOf(bars);
    }

    /**
     * Of results.
     *
     * @param results by evaluation of the plan
     */
    public static Tornado of(TornadoPlan plan, double[] results) {
        if (results.length != plan.evaluations()) {
            throw new IllegalArgumentException("Number of results is " + results.length
                    + " but must be that of the evaluations, "
                    + plan.evaluations());
        }
        double base = results[0];
        double low = results[plan.allLow()] - base;
        double high = results[plan.allHigh()] - base;
        for (int input = 0; input < plan.spreads().size(); input++) {
            low -= results[plan.lowOf(input)] - base;
            high -= results[plan.highOf(input)] - base;
        }
        List<Bar> bars = IntStream.range(0, plan.bars())
                .mapToObj(i -> new Bar(i, results[plan.lowOf(i)], results[plan.highOf(i)]))
                .sorted(Comparator.comparingDouble(Bar::swing).reversed()).toList();
        return new Tornado(base, bars, low, high);
    }
}
