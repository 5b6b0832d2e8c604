package org.amberyard.study.whatif;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.amberyard.core.math.RoundingDust;
import org.amberyard.core.whatif.CorrelatedPoints;
import org.amberyard.core.whatif.Discrete;
import org.amberyard.core.whatif.Distribution;
import org.amberyard.core.whatif.Draws;
import org.amberyard.core.whatif.IndexPlan;
import org.amberyard.core.whatif.LatinHypercube;
import org.amberyard.core.whatif.Miss;
import org.amberyard.core.whatif.RandomPoints;
import org.amberyard.core.whatif.RankCorrelation;
import org.amberyard.core.whatif.ReplicatedPoints;
import org.amberyard.core.whatif.SobolPoints;
import org.amberyard.core.whatif.Spread;
import org.amberyard.core.whatif.UnitPoints;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.Sampling;
import org.amberyard.model.whatif.Shape;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatIf;

/** The uncertain inputs of a study as distributions, and the points at which runs look. */
final class UncertainInputs {
    /** An input varied by itself goes from the value that one in ten stays below to that which one in ten exceeds. */
    private static final double LOW_SHARE = 0.1;
    private static final double HIGH_SHARE = 0.9;
    private static final double SEARCHED = 4;
    /** Samples of which draws are taken in turn, so that the scatter of their means tells the error of the mean. */
    private static final int SAMPLES = 8;
    private static final int LEAST_DRAWS_OF_A_SAMPLE = 10;
    private static final int LEAST_ROWS_OF_A_SAMPLE = 32;
    /** So many draws for each input make it possible to pair a sample anew. */
    private static final int PER_CORRELATED_INPUT = 3;
    /** The place in its list of the word that a field has now. */
    private static final double UNCHANGED_WORD = -1;

    private final WhatIf whatIf;
    private final List<Distribution> distributions = new ArrayList<>();
    private final List<Spread> spreads = new ArrayList<>();
    private final List<Boolean> wordy = new ArrayList<>();
    private final List<InputChange> changes = new ArrayList<>();

    /** @throws IllegalArgumentException when an input points at nothing or its distribution is none */
    UncertainInputs(Study study) {
        whatIf = study.getWhatIf();
        StudyVariants variants = new StudyVariants(study);
        for (int i = 0; i < whatIf.getInputs().size(); i++) {
            UncertainInput input = whatIf.getInputs().get(i);
            InputChange change = variants.change(i);
            Distribution distribution = InputDistribution.of(input, change);
            distributions.add(distribution);
            wordy.add(change.ofWords());
            changes.add(change);
            spreads.add(change.ofWords() ? new Spread(0, UNCHANGED_WORD, InputDistribution.words(input).length - 1.0)
                    : spread(input.getShape(), distribution, change));
        }
    }

    /** A list goes from its first to its last value that comes up, lest a frequent one in the middle hides the others. */
    private static Spread spread(Shape shape, Distribution distribution, InputChange change) {
        boolean list = shape == Shape.LIST;
        return Spread.of(distribution, change.unchanged(), list ? 0 : LOW_SHARE, list ? 1 : HIGH_SHARE);
    }

    List<String> names() {
        return whatIf.getInputs().stream().map(UncertainInput::getName).toList();
    }

    /** What each is varied over by itself. */
    List<Spread> spreads() {
        return spreads;
    }

    Distribution distribution(int input) {
        return distributions.get(input);
    }

    /** True for an input that is a choice among words. */
    boolean ofWords(int input) {
        return wordy.get(input);
    }

    /** True for an input that may take any value of a range, and not only those of a list. */
    boolean ofRange(int input) {
        return !(distribution(input) instanceof Discrete);
    }

    /** Value of an input in words: its number, or the word of a choice. */
    String words(int input, double value) {
        if (!ofWords(input)) {
            return changes.get(input).words(RoundingDust.swept(value, spreads.get(input).high() - spreads.get(input).low()));
        }
        return value < 0 ? "as it is" : InputDistribution.words(whatIf.getInputs().get(input))[(int) Math.round(value)];
    }

    /** Value of an input in the unit of the study; not a number for a choice among words. */
    double shown(int input, double value) {
        return ofWords(input) ? Double.NaN : changes.get(input).shown(value);
    }

    /** What the values of an input are: factors, or in which unit what is added to a field or stands in it; blank for words. */
    String unit(int input) {
        return ofWords(input) ? "" : changes.get(input).unit();
    }

    /** Low and high value of an input. */
    double[] ends(int input) {
        return new double[] {spreads.get(input).low(), spreads.get(input).high()};
    }

    /** Values of all inputs with one at a value and the others as they are. */
    double[] alone(int input, double value) {
        double[] values = new double[distributions.size()];
        Arrays.fill(values, Double.NaN);
        values[input] = value;
        return values;
    }

    /** The same with two inputs at values. */
    double[] alone(int input, double value, int other, double otherValue) {
        double[] values = alone(input, value);
        values[other] = otherValue;
        return values;
    }

    /** Values of all inputs, draw by draw. Each sample is correlated by itself, so that samples stay independent of each other. */
    Draws draws(int draws) {
        int samples = replicates();
        int each = (draws + samples - 1) / samples;
        UnitPoints points = samples == 1 ? paired(whatIf.getSeed(), draws)
                : ReplicatedPoints.of(whatIf.getSeed(), samples, seed -> paired(seed, each));
        return new Draws(points, distributions);
    }

    private UnitPoints paired(long seed, int draws) {
        return correlated(sample(seed, draws, distributions.size()), draws, 1);
    }

    /** Values of all inputs, draw by draw, to which surfaces are fitted: spread evenly, and correlated as those that are read off. */
    Draws fitted(int draws) {
        UnitPoints even = new LatinHypercube(whatIf.getSeed(), draws, distributions.size());
        return new Draws(correlated(even, draws, 1), distributions);
    }

    /**
     * Values of all inputs, draw by draw, that have nothing to do with those that surfaces are fitted to.
     *
     * @param step number of the sample, from 0
     */
    Draws keptOut(int step) {
        return new Draws(correlated(RandomPoints.heldOut(whatIf.getSeed(), distributions.size(), step * heldOut()), heldOut(), 1), distributions);
    }

    /** How many draws are kept out of a fit. */
    int heldOut() {
        return Math.max(Miss.draws(), PER_CORRELATED_INPUT * distributions.size());
    }

    /** Samples that draws are taken from in turn; 1 where draws are independent, or too few. */
    int replicates() {
        int least = Math.max(LEAST_DRAWS_OF_A_SAMPLE, whatIf.getCorrelations().isEmpty() ? 0 : PER_CORRELATED_INPUT * distributions.size());
        return whatIf.getSampling() == Sampling.RANDOM && whatIf.getCorrelations().isEmpty() || whatIf.getDraws() < SAMPLES * least ? 1
                : SAMPLES;
    }

    private UnitPoints sample(long seed, int draws, int dimensions) {
        return switch (whatIf.getSampling()) {
            case LATIN_HYPERCUBE -> new LatinHypercube(seed, draws, dimensions);
            case SOBOL -> SobolPoints.scrambled(seed, dimensions);
            case RANDOM -> new RandomPoints(seed, dimensions);
        };
    }

    /** Range in which a break-even of an input is looked for: four times as wide as its spread, within the limits of its field. */
    double[] searched(int input) {
        double low = Math.min(spreads.get(input).low(), spreads.get(input).high());
        double high = Math.max(spreads.get(input).low(), spreads.get(input).high());
        double reach = SEARCHED * (high - low) / 2;
        double middle = (low + high) / 2;
        double[] allowed = changes.get(input).allowed();
        return new double[] {Math.max(allowed[0], middle - reach), Math.min(allowed[1], middle + reach)};
    }

    /** Inputs of a named group, and inputs that are correlated, also by way of others, stand in one part of the variance. */
    int[] parts() {
        int[] of = IntStream.range(0, distributions.size()).toArray();
        pairs(0).forEach(pair -> join(of, pair.first(), pair.second()));
        for (List<Integer> group : named().values()) {
            group.forEach(input -> join(of, group.get(0), input));
        }
        int[] distinct = Arrays.stream(of).distinct().toArray();
        return Arrays.stream(of).map(g -> IntStream.range(0, distinct.length).filter(i -> distinct[i] == g).findFirst().orElseThrow())
                .toArray();
    }

    private static void join(int[] of, int one, int other) {
        int from = of[other];
        int to = of[one];
        IntStream.range(0, of.length).filter(i -> of[i] == from).forEach(i -> of[i] = to);
    }

    /** Named groups by their names, in the order in which these come up, with the places of their inputs. */
    Map<String, List<Integer>> named() {
        Map<String, List<Integer>> named = new LinkedHashMap<>();
        for (int i = 0; i < distributions.size(); i++) {
            String name = whatIf.getInputs().get(i).getGroup();
            if (name != null && !name.isBlank()) {
                named.computeIfAbsent(name.strip(), n -> new ArrayList<>()).add(i);
            }
        }
        return named;
    }

    /** Samples that rows of evaluations for shares of the variance are taken from in turn; 1 where rows are few. */
    int indexSamples(int rows) {
        int least = Math.max(LEAST_ROWS_OF_A_SAMPLE, 2 * PER_CORRELATED_INPUT * distributions.size());
        return rows >= SAMPLES * least ? SAMPLES : 1;
    }

    /** The evaluations that tell what each part explains of the variance. */
    IndexPlan indexPlan(int rows) {
        int samples = indexSamples(rows);
        int each = (rows + samples - 1) / samples;
        return new IndexPlan(samples == 1 ? indexSample(whatIf.getSeed(), rows)
                : ReplicatedPoints.of(whatIf.getSeed(), samples, seed -> indexSample(seed, each)), parts());
    }

    private UnitPoints indexSample(long seed, int rows) {
        return correlated(SobolPoints.scrambled(seed, 2 * distributions.size()), rows, 2);
    }

    private UnitPoints correlated(UnitPoints sample, int draws, int halves) {
        List<RankCorrelation> pairs = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (int half = 0; half < halves; half++) {
            pairs.addAll(pairs(half * distributions.size()));
            names.addAll(names());
        }
        return pairs.isEmpty() ? sample : CorrelatedPoints.of(sample, draws, names, pairs);
    }

    private List<RankCorrelation> pairs(int offset) {
        return whatIf.getCorrelations().stream().map(c -> new RankCorrelation(offset + whatIf.getInputs().indexOf(c.getFirst()),
                offset + whatIf.getInputs().indexOf(c.getSecond()), c.getRankCorrelation())).toList();
    }
}
