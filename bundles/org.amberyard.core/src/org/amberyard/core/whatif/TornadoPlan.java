package org.amberyard.core.whatif;

import java.util.List;

/**
 * The evaluations of inputs varied one at a time: number 0 has all inputs at their base, 1 + 2j input j low and 2 + 2j
 * input j high, and the last two all inputs low and all inputs high.
 *
 * @param spreads what each input is varied over
 */
public record TornadoPlan(List<Spread> spreads) {

    public TornadoPlan {
        spreads = List.copyOf(spreads);
    }

    /** Number of evaluations. */
    public int evaluations() {
        return 2 * spreads.size() + 3;
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
        boolean low = evaluation == lowOf(input) || evaluation == allLow();
        boolean high = evaluation == highOf(input) || evaluation == allHigh();
        return low ? spread.low() : high ? spread.high() : spread.base();
    }

    /** Number of the evaluation with one input low. */
    int lowOf(int input) {
        return 1 + 2 * input;
    }

    /** Number of the evaluation with one input high. */
    int highOf(int input) {
        return 2 + 2 * input;
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
