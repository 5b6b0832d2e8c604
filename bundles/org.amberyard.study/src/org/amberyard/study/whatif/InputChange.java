package org.amberyard.study.whatif;

import java.math.BigDecimal;
import java.math.MathContext;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.FieldWords;
import org.amberyard.model.meta.InputPlace;
import org.amberyard.model.meta.PlainNumber;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.Effect;

/** An input of a study that takes other values, and can be put back. */
final class InputChange {
    private static final MathContext DIGITS = new MathContext(3);

    private final Study study;
    private final InputPlace place;
    private final Effect effect;
    private final Object before;
    private final FieldInfo limits;

    /** @throws IllegalArgumentException when the study has no such input */
    InputChange(Study study, String kind, String element, String field, Effect effect) {
        this.study = study;
        this.place = InputPlace.of(study, kind, element, field).orElseThrow(() -> new IllegalArgumentException(
                "The study has no field “" + field + "” of a " + kind + " named “" + element + "”"));
        this.effect = effect;
        this.before = place.value();
        this.limits = FieldInfo.of(place.field());
    }

    /** True when the field holds a word or the name of an element, and no number. */
    boolean ofWords() {
        return FieldWords.isChoice(place.field());
    }

    /** A number in words: a factor, an addition or a value, shares as percentages. */
    String words(double number) {
        boolean share = effect != Effect.TIMES && limits.unitToken().equals("share");
        String text = new BigDecimal(share ? 100 * number : number).round(DIGITS).stripTrailingZeros().toPlainString().replace('-', '−');
        return (effect == Effect.TIMES ? "× " : effect == Effect.PLUS && number > 0 ? "+" : "") + text + (share ? " %" : "");
    }

    /** The number that leaves the field as it is. */
    double unchanged() {
        return switch (effect) {
            case TIMES -> 1;
            case PLUS -> 0;
            case VALUE -> ((Number) before).doubleValue();
        };
    }

    /** The number at which the field would hold a value; infinite where no number does. */
    double reaching(double value) {
        double now = ((Number) before).doubleValue();
        return switch (effect) {
            case TIMES -> now == 0 ? Double.POSITIVE_INFINITY : value / now;
            case PLUS -> value - now;
            case VALUE -> value;
        };
    }

    /** Numbers between which the field allows what it would hold, the lower first; infinite where nothing limits it. */
    double[] allowed() {
        double low = limits.min().isPresent() ? reaching(limits.min().getAsDouble()) : Double.NEGATIVE_INFINITY;
        double high = limits.max().isPresent() ? reaching(limits.max().getAsDouble()) : Double.POSITIVE_INFINITY;
        return new double[] {Math.min(low, high), Math.max(low, high)};
    }

    /** Least and largest value that the field allows. */
    FieldInfo limits() {
        return limits;
    }

    /** True when the field allows what it would hold. */
    boolean allows(double number) {
        return limits.allows(InputPlace.after(effect, ((Number) before).doubleValue(), number));
    }

    /** @throws IllegalArgumentException when the field does not allow what it would hold */
    void take(double number) {
        double then = InputPlace.after(effect, ((Number) before).doubleValue(), number);
        if (!limits.allows(then)) {
            throw new IllegalArgumentException(ElementNames.withKind(place.element()) + ": " + limits.label() + " would be "
                    + PlainNumber.text(then) + ", which the field does not allow");
        }
        place.element().eSet(place.field(), FieldWords.number(place.field(), then));
    }

    /** @throws IllegalArgumentException when the field cannot hold that */
    void take(String word) {
        place.element().eSet(place.field(), FieldWords.value(study, place.field(), word.strip()).orElseThrow(
                () -> new IllegalArgumentException(ElementNames.withKind(place.element()) + ": “" + word + "” is nothing that "
                        + limits().label() + " can hold")));
    }

    void putBack() {
        place.element().eSet(place.field(), before);
    }
}
