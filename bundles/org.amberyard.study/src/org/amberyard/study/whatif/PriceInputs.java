package org.amberyard.study.whatif;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.amberyard.core.plan.PriceField;
import org.amberyard.core.plan.PriceFields;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.whatif.Distribution;
import org.amberyard.core.whatif.Spread;

/**
 * The prices behind uncertain inputs, found by trying each input at its low value, its high value, in between and at the ends of
 * what is drawn: whatever of the study then differs is what the input reaches.
 */
final class PriceInputs {
    private static final double CLOSE = 1e-11;
    /** No run has as many draws that one of them is likely to lie beyond. */
    private static final double RAREST = 1e-9;

    private final List<PriceLine> lines;
    private final List<Boolean> prices;
    private final List<InputChange> changes;

    private PriceInputs(List<PriceLine> lines, List<Boolean> prices, List<InputChange> changes) {
        this.lines = List.copyOf(lines);
        this.prices = List.copyOf(prices);
        this.changes = List.copyOf(changes);
    }

    /** The prices behind the inputs of a study. An input that reaches further is none, nor is the second of two that move the same. */
    static PriceInputs of(StudyVariants variants, StudyInput base, UncertainInputs inputs) {
        List<PriceLine> lines = new ArrayList<>();
        List<Boolean> prices = new ArrayList<>();
        Set<PriceField> fields = new HashSet<>();
        for (int input = 0; input < inputs.spreads().size(); input++) {
            Optional<List<PriceLine>> behind = behind(input, variants, base, inputs)
                    .filter(of -> of.stream().noneMatch(line -> fields.contains(line.field())));
            behind.ifPresent(lines::addAll);
            behind.ifPresent(of -> of.forEach(line -> fields.add(line.field())));
            prices.add(behind.isPresent());
        }
        return new PriceInputs(lines, prices, IntStream.range(0, prices.size()).mapToObj(variants::change).toList());
    }

    /** By input: true for a price. */
    List<Boolean> prices() {
        return prices;
    }

    /** The prices behind an input; empty when it reaches further than prices. */
    static Optional<List<PriceLine>> behind(int input, StudyVariants variants, StudyInput base, UncertainInputs inputs) {
        Spread spread = inputs.spreads().get(input);
        if (inputs.ofWords(input) || spread.low() == spread.high()) {
            return Optional.empty();
        }
        StudyInput low = at(input, spread.low(), variants, inputs);
        StudyInput high = at(input, spread.high(), variants, inputs);
        double[] tried = tried(input, variants, inputs);
        List<StudyInput> between = Arrays.stream(tried).mapToObj(value -> at(input, value, variants, inputs)).toList();
        if (!PriceFields.alone(base, low) || !PriceFields.alone(base, high) || !between.stream().allMatch(b -> PriceFields.alone(base, b))) {
            return Optional.empty();
        }
        List<PriceLine> lines = new ArrayList<>();
        for (PriceField field : PriceField.all(base)) {
            double slope = (field.in(high) - field.in(low)) / (spread.high() - spread.low());
            PriceLine line = new PriceLine(input, field, field.in(base), field.in(low) - slope * spread.low(), slope);
            double largest = Math.max(Math.abs(field.in(low)), Math.abs(field.in(high)));
            if (!IntStream.range(0, tried.length).allMatch(i -> isNear(line, tried[i], field.in(between.get(i)), largest))) {
                return Optional.empty();
            }
            if (slope != 0) {
                lines.add(line);
            }
        }
        return Optional.of(lines);
    }

    private static boolean isNear(PriceLine line, double value, double price, double largest) {
        return Math.abs(line.at(value) - price) <= CLOSE * Math.max(Math.abs(price), largest);
    }

    /** Values at which a price must lie on the line from low to high: one between, and the ends of what is drawn. */
    private static double[] tried(int input, StudyVariants variants, UncertainInputs inputs) {
        Spread spread = inputs.spreads().get(input);
        double[] allowed = variants.change(input).allowed();
        Distribution drawn = inputs.distribution(input);
        return new double[] {(spread.low() + 2 * spread.high()) / 3, Math.max(allowed[0], drawn.quantile(RAREST)),
            Math.min(allowed[1], drawn.quantile(1 - RAREST))};
    }

    private static StudyInput at(int input, double value, StudyVariants variants, UncertainInputs inputs) {
        return variants.at(inputs.alone(input, value));
    }

    /** The prices that vary. */
    List<PriceField> fields() {
        return lines.stream().map(PriceLine::field).toList();
    }

    /** True when no field forbids the values of the inputs that are prices. */
    boolean allow(double[] inputs) {
        for (int input = 0; input < inputs.length; input++) {
            if (prices.get(input) && !Double.isNaN(inputs[input]) && !changes.get(input).allows(inputs[input])) {
                return false;
            }
        }
        return true;
    }

    /** Writes the prices at values of the inputs; not a number leaves them as they are. */
    void write(double[] inputs, double[] to) {
        for (int i = 0; i < to.length; i++) {
            PriceLine line = lines.get(i);
            to[i] = line.at(inputs[line.input()]);
        }
    }
}
