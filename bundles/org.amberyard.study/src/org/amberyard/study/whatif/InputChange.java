package org.amberyard.study.whatif;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.FieldWords;
import org.amberyard.model.meta.InputPlace;
import org.amberyard.model.meta.PlainNumber;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.Effect;
import org.amberyard.study.StudyUnits;
import org.amberyard.study.VariedNumber;
import org.eclipse.emf.ecore.EStructuralFeature;

/** An input of a study that takes other values, and can be put back; it may stand in several places, which move together. */
final class InputChange {
    private static final MathContext DIGITS = new MathContext(3);
    /** How far above a limit a value stands that must exceed it: so little that nobody tells them apart. */
    private static final double JUST = 1e-9;

    private final Study study;
    private final Effect effect;
    private final List<Place> places;

    /** A place, what it held before, and what its field allows. */
    private record Place(InputPlace at, Object before, FieldInfo limits) {

        double now() {
            return ((Number) before).doubleValue();
        }

        boolean allows(Effect effect, double number) {
            return limits.allows(InputPlace.after(effect, now(), number));
        }

        void set(Object value) {
            at.element().eSet(at.field(), value);
        }
    }

    /** @throws IllegalArgumentException when the study has no such input */
    InputChange(Study study, String kind, String element, String field, Effect effect) {
        this.study = study;
        this.effect = effect;
        this.places = InputPlace.all(study, kind, element, field).stream()
                .map(at -> new Place(at, at.value(), FieldInfo.of(at.field()))).toList();
        if (places.isEmpty()) {
            throw new IllegalArgumentException(
                    "The study has no field “" + field + "” of a " + kind + " named “" + element + "”");
        }
    }

    private Place first() {
        return places.get(0);
    }

    /** Where it stands, with what the fields hold before it is changed. */
    List<InputPlace> places() {
        return places.stream().map(Place::at).toList();
    }

    /** What a field would hold that holds a number now. */
    double then(EStructuralFeature field, Object now, double number) {
        return ((Number) FieldWords.number(field, InputPlace.after(effect, ((Number) now).doubleValue(), number))).doubleValue();
    }

    /** True when the field holds a word or the name of an element, and no number. */
    boolean ofWords() {
        return FieldWords.isChoice(first().at().field());
    }

    private Unit ofNumbers() {
        return VariedNumber.unit(effect, places.stream().map(p -> p.at().field()).toList());
    }

    /** A number in the unit of the study. */
    double shown(double number) {
        return ofNumbers().show(number, StudyUnits.of(study));
    }

    /** What numbers are: a factor, or an addition or a value with the symbol of its unit in the study. */
    String unit() {
        String symbol = ofNumbers().symbol(StudyUnits.of(study), StudyUnits.currency(study));
        return switch (effect) {
            case TIMES -> "factor";
            case PLUS -> (symbol + " added").strip();
            case VALUE -> symbol;
        };
    }

    /** A number in words: a factor, or an addition or a value in the units of the study. */
    String words(double number) {
        Unit unit = ofNumbers();
        UnitSystem system = StudyUnits.of(study);
        String text = new BigDecimal(shown(number)).round(unit == Unit.CALENDAR ? MathContext.UNLIMITED : DIGITS).stripTrailingZeros()
                .toPlainString().replace('-', '−');
        String symbol = unit.symbol(system, StudyUnits.currency(study));
        return (effect == Effect.TIMES ? "× " : effect == Effect.PLUS && number > 0 ? "+" : "") + text + (symbol.isEmpty() ? "" : " " + symbol);
    }

    /** The number that leaves the field as it is. */
    double unchanged() {
        return switch (effect) {
            case TIMES -> 1;
            case PLUS -> 0;
            case VALUE -> first().now();
        };
    }

    /** The number at which a field would hold a value. */
    private double reaching(double value, Place place) {
        return switch (effect) {
            case TIMES -> value / place.now();
            case PLUS -> value - place.now();
            case VALUE -> value;
        };
    }

    /**
     * Numbers between which the fields allow what they would hold, themselves allowed, the lower first; infinite where nothing
     * limits them.
     */
    double[] allowed() {
        double[] allowed = {Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY};
        for (Place place : places) {
            if (effect == Effect.TIMES && place.now() == 0) {
                continue;
            }
            double one = reaching(least(place.limits()), place);
            double other = reaching(place.limits().max().orElse(Double.POSITIVE_INFINITY), place);
            allowed[0] = Math.max(allowed[0], inward(Math.min(one, other), Double.POSITIVE_INFINITY, place));
            allowed[1] = Math.min(allowed[1], inward(Math.max(one, other), Double.NEGATIVE_INFINITY, place));
        }
        return allowed;
    }

    /** The least value that a field takes: its limit, or just above one that it must exceed. */
    private static double least(FieldInfo limits) {
        double min = limits.min().orElse(Double.NEGATIVE_INFINITY);
        if (limits.above().isEmpty()) {
            return min;
        }
        double above = limits.above().getAsDouble();
        return Math.max(min, above + JUST * Math.max(1, Math.abs(above)));
    }

    /** The number, or the next one from which rounding does not lead out of the limits. */
    private double inward(double number, double towards, Place place) {
        double inward = number;
        while (Double.isFinite(inward) && !place.allows(effect, inward)) {
            inward = Math.nextAfter(inward, towards);
        }
        return inward;
    }

    /** True when the fields allow what they would hold. */
    boolean allows(double number) {
        return places.stream().allMatch(place -> place.allows(effect, number));
    }

    /** @throws IllegalArgumentException when a field does not allow what it would hold */
    void take(double number) {
        for (Place place : places) {
            double then = InputPlace.after(effect, place.now(), number);
            if (!place.limits().allows(then)) {
                throw new IllegalArgumentException(ElementNames.withKind(place.at().element()) + ": " + place.limits().label()
                        + " would be " + PlainNumber.text(then) + ", which the field does not allow");
            }
            place.set(FieldWords.number(place.at().field(), then));
        }
    }

    /** @throws IllegalArgumentException when the field cannot hold that */
    void take(String word) {
        for (Place place : places) {
            place.set(FieldWords.value(study, place.at().field(), word.strip()).orElseThrow(
                    () -> new IllegalArgumentException(ElementNames.withKind(place.at().element()) + ": “" + word
                            + "” is nothing that " + place.limits().label() + " can hold")));
        }
    }

    void putBack() {
        places.forEach(place -> place.set(place.before()));
    }
}
