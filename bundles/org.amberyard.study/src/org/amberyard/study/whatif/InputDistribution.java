package org.amberyard.study.whatif;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.whatif.Discrete;
import org.amberyard.core.whatif.Distribution;
import org.amberyard.core.whatif.Empirical;
import org.amberyard.core.whatif.LogNormal;
import org.amberyard.core.whatif.Normal;
import org.amberyard.core.whatif.Pert;
import org.amberyard.core.whatif.Triangular;
import org.amberyard.core.whatif.TruncatedLogNormal;
import org.amberyard.core.whatif.TruncatedNormal;
import org.amberyard.core.whatif.Uniform;
import org.amberyard.model.meta.NumberSeries;
import org.amberyard.model.whatif.UncertainInput;

/** Makes the distribution of an uncertain input. That of a choice among words is one of their places in the list, from 0. */
final class InputDistribution {
    /** Standard deviations from the middle of a normal distribution to its 90th and 95th percentile. */
    private static final double TO_P90 = 1.2815515655446004;
    private static final double TO_P95 = 1.6448536269514722;

    private InputDistribution() {
    }

    static Distribution of(UncertainInput input, InputChange change) {
        return switch (input.getShape()) {
            case UNIFORM -> new Uniform(input.getLow(), input.getHigh());
            case TRIANGULAR -> new Triangular(input.getLow(), input.getLikely(), input.getHigh());
            case PERT -> new Pert(input.getLow(), input.getLikely(), input.getHigh());
            case NORMAL -> normal(input, change);
            case LOG_NORMAL -> logNormal(input, change);
            case LIST -> list(input, change);
            case OBSERVED -> new Empirical(Arrays.stream(words(input)).map(InputDistribution::number).sorted().toList());
        };
    }

    /** Words of the choices of an input. */
    static String[] words(UncertainInput input) {
        return Arrays.stream(input.getChoices().split(";")).map(String::strip).toArray(String[]::new);
    }

    private static double number(String word) {
        return NumberSeries.parse(word)[0];
    }

    /** Its tails end where the field's limits are. */
    private static Distribution normal(UncertainInput input, InputChange change) {
        Normal whole = new Normal(input.getLikely(), (input.getHigh() - input.getLow()) / (2 * TO_P90));
        double[] allowed = change.allowed();
        return new TruncatedNormal(whole, allowed[0], allowed[1]);
    }

    /** Cut likewise. */
    private static Distribution logNormal(UncertainInput input, InputChange change) {
        LogNormal whole = LogNormal.ofMedian(input.getLikely(),
                input.getLikely() * Math.pow(input.getHigh() / input.getLikely(), TO_P95 / TO_P90));
        double[] allowed = change.allowed();
        return new TruncatedLogNormal(whole, allowed[0], allowed[1]);
    }

    private static Distribution list(UncertainInput input, InputChange change) {
        String[] words = words(input);
        double[] weights = input.getWeights() == null || input.getWeights().isBlank()
                ? IntStream.range(0, words.length).mapToDouble(i -> 1).toArray() : NumberSeries.parse(input.getWeights());
        double all = Arrays.stream(weights).sum();
        double[] values = IntStream.range(0, words.length).mapToDouble(i -> change.ofWords() ? i : number(words[i])).toArray();
        List<Integer> rising = IntStream.range(0, words.length).boxed().sorted(Comparator.comparingDouble(i -> values[i])).toList();
        return new Discrete(rising.stream().map(i -> values[i]).toList(), rising.stream().map(i -> weights[i] / all).toList());
    }
}
