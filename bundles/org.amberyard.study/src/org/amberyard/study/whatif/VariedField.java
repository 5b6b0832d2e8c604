package org.amberyard.study.whatif;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.FieldWords;
import org.amberyard.model.meta.InputPlace;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.Effect;
import org.amberyard.model.whatif.Shape;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatifFactory;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Makes an uncertain input of a field that someone points at. */
public final class VariedField {
    private static final double SHARE_STEP = 0.01;

    private final Study study;
    private final EObject element;
    private final EStructuralFeature field;

    private VariedField(Study study, EObject element, EStructuralFeature field) {
        this.study = study;
        this.element = element;
        this.field = field;
    }

    /**
     * An input that varies a field: a number from a fifth less to a fifth more, one that is zero by a step to both sides, a choice
     * among all that the field can hold. It is not yet in the study.
     *
     * @throws IllegalArgumentException with words for people when the field cannot be varied
     */
    public static UncertainInput of(Study study, EObject element, EStructuralFeature field) {
        return new VariedField(study, element, field).input();
    }

    private UncertainInput input() {
        UncertainInput input = WhatifFactory.eINSTANCE.createUncertainInput();
        input.setKind(element.eClass().getName());
        input.setElement(place());
        input.setField(field.getName());
        input.setName(name());
        if (FieldWords.isChoice(field)) {
            ofWords(input);
        } else {
            ofNumbers(input);
        }
        return input;
    }

    private String label() {
        return FieldInfo.of(field).label();
    }

    /** How the element is found again by its name. */
    private String place() {
        String name = ElementNames.of(element);
        Stream<String> names = element.eContainer() == null || element.eContainer() == study ? Stream.of("", name)
                : Stream.of("", name, ElementNames.of(element.eContainer()) + " / " + name);
        return names.filter(n -> InputPlace.of(study, element.eClass().getName(), n, field.getName())
                .filter(p -> p.element() == element && only(n)).isPresent()).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("Give " + ElementNames.withKind(element)
                        + " a name of its own first, so that it can be told from the others"));
    }

    /** No name is enough only where there is one of the kind. */
    private boolean only(String name) {
        return !name.isEmpty() || element.eContainmentFeature() == null || !element.eContainmentFeature().isMany();
    }

    private String name() {
        String kind = ElementNames.of(element);
        String plain = element.eContainmentFeature() != null && element.eContainmentFeature().isMany() ? kind + ": " + label() : label();
        List<String> taken = study.getWhatIf() == null ? List.of()
                : study.getWhatIf().getInputs().stream().map(UncertainInput::getName).toList();
        return Stream.iterate(1, i -> i + 1).map(i -> i == 1 ? plain : plain + " " + i).filter(n -> !taken.contains(n)).findFirst()
                .orElseThrow();
    }

    private void ofWords(UncertainInput input) {
        List<String> words = FieldWords.all(study, field);
        if (words.size() < 2) {
            throw new IllegalArgumentException(label() + " can hold one thing only; there is nothing to choose from");
        }
        input.setShape(Shape.LIST);
        input.setEffect(Effect.VALUE);
        input.setChoices(words.stream().collect(Collectors.joining("; ")));
    }

    private void ofNumbers(UncertainInput input) {
        if (!FieldWords.isNumber(field)) {
            throw new IllegalArgumentException(label() + " holds neither a number nor a choice");
        }
        double now = Optional.ofNullable((Number) element.eGet(field)).filter(n -> n.doubleValue() != 0 || !FieldInfo.zeroIsMissing(field)).orElseThrow(
                () -> new IllegalArgumentException(label() + " is empty; enter its value first")).doubleValue();
        boolean rise = field.getName().startsWith("escalation");
        if (now == 0 || rise) {
            input.setEffect(Effect.PLUS);
            double step = FieldInfo.of(field).unitToken().equals("share") ? SHARE_STEP : 1;
            input.setLow(rise ? -step : 0);
            input.setLikely(0);
            input.setHigh(step);
        }
        keepWithin(input, now);
    }

    /** A range that would leave the limits of the field ends at them, and says so. */
    private void keepWithin(UncertainInput input, double now) {
        double low = within(input, now, input.getLow());
        double high = within(input, now, input.getHigh());
        boolean cut = low != input.getLow() || high != input.getHigh();
        if (low == high && input.getEffect() == Effect.PLUS) {
            low = within(input, now, -input.getHigh());
        }
        input.setLow(low);
        input.setHigh(high);
        if (cut) {
            input.setNote("Range cut to what the field can hold.");
        }
    }

    /** An end of the range, drawn in so far that the field can hold what comes of it. */
    private double within(UncertainInput input, double now, double end) {
        FieldInfo info = FieldInfo.of(field);
        double value = InputPlace.after(input.getEffect(), now, end);
        double kept = Math.min(info.max().orElse(Double.POSITIVE_INFINITY), Math.max(info.min().orElse(Double.NEGATIVE_INFINITY), value));
        if (kept <= info.above().orElse(Double.NEGATIVE_INFINITY)) {
            kept = (now + info.above().getAsDouble()) / 2;
        }
        return kept == value ? end : input.getEffect() == Effect.PLUS ? kept - now : kept / now;
    }
}
