package org.amberyard.core.why;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How a figure comes about: a tree from a result down to inputs.
 *
 * @param name what the figure is, in words
 * @param value the figure
 * @param unit token of its unit, see {@link org.amberyard.core.units.Unit}; {@code money} for the currency of the study, empty for
 *            a plain number
 * @param rule how it follows from its parts, in words with the names of the parts; empty for an input
 * @param parts what it follows from, in the order of the rule; empty for an input
 * @param input the input that it is, where it is one
 */
public record Derivation(String name, double value, String unit, String rule, List<Derivation> parts,
        Optional<InputRef> input) {

    /** Unit of amounts of money. */
    public static final String MONEY = "money";

    public Derivation {
        parts = List.copyOf(parts);
    }

    /** An input of the study. */
    public static Derivation input(String name, double value, String unit, InputRef input) {
        return new Derivation(name, value, unit, "", List.of(), Optional.of(input));
    }

    /** All inputs of an element of the study; it has no figure of its own. */
    public static Derivation inputsOf(String name, InputRef element) {
        return new Derivation(name, Double.NaN, "", "", List.of(), Optional.of(element));
    }

    /** A figure by a rule that is neither a plain sum nor a plain product. */
    public static Derivation of(String name, double value, String unit, String rule, Derivation... parts) {
        return new Derivation(name, value, unit, rule, List.of(parts), Optional.empty());
    }

    /** The product of the parts. */
    public static Derivation product(String name, String unit, Derivation... parts) {
        double value = Arrays.stream(parts).mapToDouble(Derivation::value).reduce(1, (a, b) -> a * b);
        return new Derivation(name, value, unit, "product", List.of(parts), Optional.empty());
    }

    /** The sum of the parts. */
    public static Derivation sum(String name, String unit, List<Derivation> parts) {
        double value = parts.stream().mapToDouble(Derivation::value).sum();
        return new Derivation(name, value, unit, "sum", parts, Optional.empty());
    }
}
