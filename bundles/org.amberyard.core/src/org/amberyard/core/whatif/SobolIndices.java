package org.amberyard.core.whatif;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.TDistribution;
import org.amberyard.core.math.Checks;

/**
 * Shares of the variance of a result that groups of inputs explain, with intervals from rows that are drawn again
 * (bootstrap, Efron, "Bootstrap methods: another look at the jackknife", Annals of Statistics 7 (1979), 1–26,
 * percentile intervals).
 *
 * <p>With fA, fB, fAB the results of the points of a row: first-order index (mean(fB fAB) − m²) / W with m and W mean and
 * variance of fB and fAB together (Janon, Klein, Lagnoux, Nodet and Prieur, "Asymptotic normality and efficiency of two
 * Sobol index estimators", ESAIM: Probability and Statistics 18 (2014), 342–364), total index mean((fA − fAB)²) / 2V with
 * V the variance of fA and fB together (Jansen, "Analysis of variance designs for model output", Computer Physics
 * Communications 117 (1999), 35–43; all from memory). Rows of an even sample scatter less than such intervals say, which take
 * them for independent; where rows were taken in turn from several independent samples, the scatter of the indices of these makes
 * the intervals instead.
 *
 * @param first by group: what it explains by itself
 * @param total by group: what it explains by itself and together with others
 */
public record SobolIndices(List<Band> first, List<Band> total) {

    public SobolIndices {
        first = List.copyOf(first);
        total = List.copyOf(total);
    }

    /**
     * How intervals are made.
     *
     * @param samples how often rows are drawn again, 100 or more
     * @param confidence above 0 and below 1, such as 0.95
     * @param seed any number
     */
    public record Bootstrap(int samples, double confidence, long seed) {
        public Bootstrap {
            Checks.atLeast("Samples of the bootstrap", samples, 100);
            Checks.within("Confidence", confidence, Double.MIN_VALUE, Math.nextDown(1.0));
        }
    }

    /**
     * The indices of a result; all 0 when it does not vary.
     *
     * @param results by evaluation of the plan; a last row that is not complete is left out
     * @param groups number of groups of the plan
     * @throws IllegalArgumentException when there are fewer than two rows
     */
    public static SobolIndices of(double[] results, int groups, Bootstrap bootstrap) {
        IndexRows rows = IndexRows.of(results, groups);
        int[] all = IntStream.range(0, rows.count()).toArray();
        double[] first = rows.first(all);
        double[] total = rows.total(all);
        double[][] firstAgain = new double[groups][bootstrap.samples()];
        double[][] totalAgain = new double[groups][bootstrap.samples()];
        CounterRandom random = new CounterRandom(bootstrap.seed(), RandomUse.RESAMPLE);
        for (int sample = 0; sample < bootstrap.samples(); sample++) {
            int number = sample;
            Arrays.setAll(all, place -> random.below(rows.count(), place, number));
            put(rows.first(all), firstAgain, sample);
            put(rows.total(all), totalAgain, sample);
        }
        return new SobolIndices(bands(first, firstAgain, bootstrap), bands(total, totalAgain, bootstrap));
    }

    /**
     * The same with intervals from the indices of independent samples, by Student's distribution.
     *
     * @param samples samples that rows were taken from in turn, two or more, see {@link ReplicatedPoints}
     * @param confidence above 0 and below 1, such as 0.95
     * @throws IllegalArgumentException when there are fewer than two rows of each sample
     */
    public static SobolIndices ofSamples(double[] results, int groups, int samples, double confidence) {
        IndexRows rows = IndexRows.of(results, groups);
        Checks.atLeast("Number of rows of a sample", rows.count() / Checks.atLeast("Number of samples", samples, 2), 2);
        double[][] first = new double[groups][samples];
        double[][] total = new double[groups][samples];
        for (int sample = 0; sample < samples; sample++) {
            int of = sample;
            int[] own = IntStream.range(0, rows.count()).filter(row -> row % samples == of).toArray();
            put(rows.first(own), first, sample);
            put(rows.total(own), total, sample);
        }
        int[] all = IntStream.range(0, rows.count()).toArray();
        return new SobolIndices(around(rows.first(all), first, confidence), around(rows.total(all), total, confidence));
    }

    private static List<Band> around(double[] values, double[][] samples, double confidence) {
        return IntStream.range(0, values.length).mapToObj(group -> {
            double deviations = new TDistribution(samples[group].length - 1.0).inverseCumulativeProbability((1 + confidence) / 2);
            double reach = deviations * Moments.of(samples[group]).standardError();
            return new Band(values[group], values[group] - reach, values[group] + reach);
        }).toList();
    }

    private static void put(double[] values, double[][] columns, int place) {
        for (int group = 0; group < values.length; group++) {
            columns[group][place] = values[group];
        }
    }

    private static List<Band> bands(double[] values, double[][] again, Bootstrap bootstrap) {
        double cut = (1 - bootstrap.confidence()) / 2;
        return IntStream.range(0, values.length).mapToObj(group -> {
            SortedDraws drawn = SortedDraws.of(again[group]);
            return new Band(values[group], drawn.quantile(cut), drawn.quantile(1 - cut));
        }).toList();
    }
}
