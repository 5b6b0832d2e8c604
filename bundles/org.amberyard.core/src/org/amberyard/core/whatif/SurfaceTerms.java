package org.amberyard.core.whatif;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** The terms of a quadratic function of inputs that evaluations can tell apart: 1, inputs in deviations from their means, products. */
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
    static SurfaceTerms of(double[][] inputs) {
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
        return new SurfaceTerms(means, scales, factors(values));
    }

    /** Inputs whose product each term is, by how many values inputs take. */
    private static List<int[]> factors(int[] values) {
        int[] varying = IntStream.range(0, values.length).filter(i -> values[i] > 1).toArray();
        List<int[]> factors = new ArrayList<>(List.of(new int[0]));
        Arrays.stream(varying).forEach(i -> factors.add(new int[] {i}));
        for (int i : varying) {
            Arrays.stream(varying).filter(j -> j > i || j == i && values[i] >= VALUES_FOR_A_SQUARE)
                    .forEach(j -> factors.add(new int[] {i, j}));
        }
        return factors;
    }

    /** Values of the terms at inputs. */
    double[] at(double[] inputs) {
        return factors.stream().mapToDouble(term -> Arrays.stream(term).mapToDouble(i -> (inputs[i] - means[i]) / scales[i])
                .reduce(1, (a, b) -> a * b)).toArray();
    }
}
