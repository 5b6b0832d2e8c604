package org.amberyard.core.whatif;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.math.Checks;

/**
 * One of some values, each with its own weight. Where the input is one of a list of alternatives, a value is a place in
 * it.
 *
 * @param values values, in rising order
 * @param shares share of all cases of each value; they add up to 1
 */
public record Discrete(List<Double> values, List<Double> shares) implements Distribution {

    /** Sorts the values and makes shares of weights, in whatever measure these are given. */
    public Discrete {
        check(values, shares);
        List<Double> given = values;
        List<Double> weights = shares;
        double sum = weights.stream().mapToDouble(w -> w).sum();
        int[] order = IntStream.range(0, given.size()).boxed().sorted(Comparator.comparing(given::get)).mapToInt(i -> i)
                .toArray();
        values = IntStream.of(order).mapToObj(given::get).toList();
        shares = IntStream.of(order).mapToObj(i -> weights.get(i) / sum).toList();
    }

    private static void check(List<Double> values, List<Double> weights) {
        Checks.atLeast("Number of values of the discrete distribution", values.size(), 1);
        if (values.size() != weights.size()) {
            throw new IllegalArgumentException("Weights of the discrete distribution are " + weights.size()
                    + " but must be one for each of its " + values.size() + " values");
        }
        values.forEach(v -> Checks.finite("Value of the discrete distribution", v));
        weights.forEach(w -> Checks.notNegative("Weight of the discrete distribution", w));
        Checks.positive("Sum of the weights of the discrete distribution", weights.stream().mapToDouble(w -> w).sum());
    }

    @Override
    public double quantile(double share) {
        Checks.within("Share", share, 0, 1);
        double reached = 0;
        int last = 0;
        for (int i = 0; i < values.size(); i++) {
            reached += shares.get(i);
            last = shares.get(i) > 0 ? i : last;
            if (shares.get(i) > 0 && reached >= share) {
                return values.get(i);
            }
        }
        return values.get(last);
    }

    @Override
    public double mean() {
        return IntStream.range(0, values.size()).mapToDouble(i -> shares.get(i) * values.get(i)).sum();
    }

    @Override
    public double sd() {
        double mean = mean();
        return Math.sqrt(IntStream.range(0, values.size())
                .mapToDouble(i -> shares.get(i) * (values.get(i) - mean) * (values.get(i) - mean)).sum());
    }
}
