package org.amberyard.core.whatif;

import java.util.List;

/**
 * The evaluations of inputs varied one at a time, and of groups of inputs that are varied together: number 0 has all inputs at their
 * base, 1 + 2j input j low and 2 + 2j input j high; groups follow behind the inputs likewise; the last two have all inputs low and
 * all inputs high.
 *
 * @param spreads what each input is varied over
 * @param groups places of the inputs of each group
 */
public record TornadoPlan(List<Spread> spreads, List<List<Integer>> groups) {

    public TornadoPlan {
        spreads = List.copyOf(spreads);
        groups = groups.stream().map(List::copyOf).toList();
    }

    /** Without groups. */
    public TornadoPlan(List<Spread> spreads) {
        this(spreads, List.of());
    }

    /** Number of inputs and groups. */
    int bars() {
        return spreads.size() + groups.size();
    }

    /** Number of evaluations. */
    public int evaluations() {
        return 2 * bars() + 3;
    }

    /** Values of all inputs in an evaluation. */
    public double[] at(int evaluation) {
        double[] values = new double[spreads.size()];
        for (int input = 0; input < values.length; input++) {
            values[input] = value(evaluation, input);
        }
        return values;
    }

    private double value(int evaluation, int input) {
        Spread spread = spreads.get(input);
        if (evaluation == allLow() || evaluation == allHigh()) {
            return evaluation == allLow() ? spread.low() : spread.high();
        }
        int bar = (evaluation - 1) / 2;
        boolean varied = evaluation > 0 && (bar < spreads.size() ? bar == input : groups.get(bar - spreads.size()).contains(input));
        return !varied ? spread.base() : evaluation == lowOf(bar) ? spread.low() : spread.high();
    }

    /** Number of the evaluation with one input, or behind the inputs one group, low. */
    int lowOf(int bar) {
        return 1 + 2 * bar;
    }

    /** Number of the evaluation with it high. */
    int highOf(int bar) {
        return 2 + 2 * bar;
    }

    /** Number of the evaluation with all inputs low. */
    int allLow() {
        return evaluations() - 2;
    }

    /** Number of the evaluation with all inputs high. */
    int allHigh() {
        return evaluations() - 1;
    }
}
