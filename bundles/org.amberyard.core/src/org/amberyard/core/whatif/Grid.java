package org.amberyard.core.whatif;

import java.util.Arrays;
import org.amberyard.core.math.Checks;
import org.amberyard.core.math.RoundingDust;

/** Two inputs varied together: the evaluations, one for each pair of their values, the first input running fastest. */
public final class Grid {
    private final double[] first;
    private final double[] second;

    /**
     * A grid.
     *
     * @param first values of the first input, rising, two or more
     * @param second values of the second input, likewise
     */
    public Grid(double[] first, double[] second) {
        this.first = rising("first", first);
        this.second = rising("second", second);
    }

    private static double[] rising(String which, double[] values) {
        Checks.atLeast("Number of values of the " + which + " input", values.length, 2);
        for (int i = 1; i < values.length; i++) {
            Checks.above("Value " + (i + 1) + " of the " + which + " input", values[i], values[i - 1]);
        }
        return values.clone();
    }

    /** Values of an input in equal steps from a lower to an upper limit, both among them; 0 itself where a step comes next to it. */
    public static double[] steps(double low, double high, int values) {
        Checks.atLeast("Number of values", values, 2);
        Checks.above("Upper limit", high, low);
        double[] steps = new double[values];
        Arrays.setAll(steps, i -> RoundingDust.swept(i == values - 1 ? high : low + (high - low) * i / (values - 1), high - low));
        return steps;
    }

    /** Number of values of the first input. */
    public int columns() {
        return first.length;
    }

    /** Number of values of the second input. */
    public int rows() {
        return second.length;
    }

    /** Number of evaluations. */
    public int evaluations() {
        return first.length * second.length;
    }

    /** Value of the first input in an evaluation. */
    public double first(int evaluation) {
        return first[evaluation % first.length];
    }

    /** Value of the second input in an evaluation. */
    public double second(int evaluation) {
        return second[evaluation / first.length];
    }
}
