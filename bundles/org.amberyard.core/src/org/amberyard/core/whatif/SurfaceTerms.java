package org.amberyard.core.whatif;

import java.util.Arrays;
import java.util.List;

/** The terms of a surface that evaluations can tell apart: 1, inputs in deviations from their means, products. */
final class SurfaceTerms {
    private static final int VALUES_FOR_A_SQUARE = 3;

    private final double[] means;
    private final double[] scales;
    private final List<int[]> factors;

    private SurfaceTerms(double[] means, double[] scales, List<int[]> factors) {
        this.means = means;
        this.scales = scales;
        this.factors = factors;
    }

    /**
     * Of the inputs of evaluations.
     *
     * @param inputs by evaluation and input
     */
    static SurfaceTerms of(double[][] inputs, SurfaceShape shape) {
        int count = inputs[0].length;
        double[] means = new double[count];
        double[] scales = new double[count];
        int[] values = new int[count];
        for (int input = 0; input < count; input++) {
            int of = input;
            double[] column = Arrays.stream(inputs).mapToDouble(row -> row[of]).toArray();
            Moments moments = Moments.of(column);
            means[input] = moments.mean();
            scales[input] = moments.squares() > 0 ? moments.sd() : 1;
            values[input] = (int) Arrays.stream(column).distinct().count();
        }
        return new SurfaceTerms(means, scales, shape.factors().stream().filter(term -> told(term, values)).toList());
    }

    /** True where inputs take enough values to tell a term from the others. */
    private static boolean told(int[] term, int[] values) {
        boolean square = term.length > 1 && term[0] == term[1];
        return Arrays.stream(term).allMatch(i -> values[i] >= (square ? VALUES_FOR_A_SQUARE : 2));
    }

    /** Values of the terms at inputs. */
    double[] at(double[] inputs) {
        double[] at = new double[factors.size()];
        for (int term = 0; term < at.length; term++) {
            at[term] = 1;
            for (int i : factors.get(term)) {
                at[term] *= (inputs[i] - means[i]) / scales[i];
            }
        }
        return at;
    }
}
