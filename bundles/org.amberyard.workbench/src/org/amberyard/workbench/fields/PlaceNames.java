package org.amberyard.workbench.fields;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.amberyard.model.meta.InputPlace;
import org.amberyard.model.meta.PlaceWords;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.WhatifPackage.Literals;
import org.amberyard.workbench.language.Words;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.osgi.util.NLS;

/**
 * Kinds, elements and fields that an uncertain input or a change of a scenario points at. The study keeps their names of the data
 * dictionary; the window shows them, and takes them as typed, by the labels that they have everywhere else.
 */
final class PlaceNames {
    private enum Part {
        KIND, ELEMENT, FIELD
    }

    private final EStructuralFeature kind;
    private final Part part;

    private PlaceNames(EStructuralFeature kind, Part part) {
        this.kind = kind;
        this.part = part;
    }

    /** The names that a field holds; empty for other fields. */
    static Optional<PlaceNames> of(EStructuralFeature feature) {
        return of(feature, Literals.UNCERTAIN_INPUT__KIND, Literals.UNCERTAIN_INPUT__ELEMENT, Literals.UNCERTAIN_INPUT__FIELD)
                .or(() -> of(feature, Literals.SCENARIO_CHANGE__KIND, Literals.SCENARIO_CHANGE__ELEMENT, Literals.SCENARIO_CHANGE__FIELD));
    }

    private static Optional<PlaceNames> of(EStructuralFeature feature, EStructuralFeature kind, EStructuralFeature element,
            EStructuralFeature field) {
        int part = List.of(kind, element, field).indexOf(feature);
        return part < 0 ? Optional.empty() : Optional.of(new PlaceNames(kind, Part.values()[part]));
    }

    /** The field of an element that holds the kind, on which the names of elements and fields hang. */
    EStructuralFeature kind() {
        return kind;
    }

    private String kindOf(EObject element) {
        return (String) element.eGet(kind);
    }

    /**
     * What is shown for a name that an element holds; a name that the model does not have stays as it is. Every element goes by words that
     * start with the sign of it, so that one which is called “every one” is not taken for all.
     */
    String shown(EObject element, String name) {
        if (name == null) {
            return "";
        }
        return switch (part) {
            case KIND -> PlaceWords.kindLabel(name, Words.model());
            case ELEMENT -> InputPlace.EVERY.equals(name) ? Messages.Place_every : name;
            case FIELD -> String.join(PlaceWords.SEPARATOR + " ", PlaceWords.fieldLabels(kindOf(element), name, Words.model()));
        };
    }

    /** What may be chosen for an element of a study; null for one that is yet to come. */
    List<String> choices(EObject element, Study study) {
        PlaceOffers offers = new PlaceOffers(study);
        return part == Part.KIND ? offers.kinds().stream().map(Words::kind).distinct().sorted().toList()
                : Optional.ofNullable(element).map(this::kindOf).flatMap(PlaceWords::kind)
                        .map(of -> part == Part.ELEMENT ? offers.elements(of, Messages.Place_every) : offers.fieldLabels(of)).orElse(List.of());
    }

    /**
     * The name of what was typed: a label, or the name itself.
     *
     * @param kindName the kind that has the field; null where none is known
     * @throws FieldRefusal when there is no such kind, or the kind no such field
     */
    String stored(String kindName, String typed) throws FieldRefusal {
        if (part == Part.KIND) {
            return PlaceWords.kinds().filter(k -> isMeant(typed, k.getName(), Words.kind(k))).findFirst().map(EClass::getName)
                    .orElseThrow(() -> new FieldRefusal(NLS.bind(Messages.Place_noKind, typed)));
        }
        if (part == Part.ELEMENT) {
            return isMeant(typed, InputPlace.EVERY, Messages.Place_every) ? InputPlace.EVERY : typed.strip();
        }
        StringBuilder names = new StringBuilder();
        for (String one : typed.split(PlaceWords.SEPARATOR)) {
            names.append(names.isEmpty() ? "" : PlaceWords.SEPARATOR + " ").append(fieldName(kindName, one.strip()));
        }
        return names.toString();
    }

    private static String fieldName(String kindName, String typed) throws FieldRefusal {
        return PlaceWords.kind(kindName).map(PlaceWords::fields).orElse(List.of()).stream()
                .filter(f -> isMeant(typed, f.getName(), Words.field(f).label())).findFirst().map(EStructuralFeature::getName)
                .orElseThrow(() -> new FieldRefusal(kindName == null ? Messages.Place_kindFirst
                        : NLS.bind(Messages.Place_noField, typed, PlaceWords.kindLabel(kindName, Words.model()))));
    }

    private static boolean isMeant(String typed, String name, String label) {
        return typed.strip().equals(name) || typed.strip().toLowerCase(Locale.ROOT).equals(label.toLowerCase(Locale.ROOT));
    }
}
