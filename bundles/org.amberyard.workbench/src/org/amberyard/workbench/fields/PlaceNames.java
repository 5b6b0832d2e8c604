package org.amberyard.workbench.fields;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.model.meta.FieldWords;
import org.amberyard.model.meta.ModelPackages;
import org.amberyard.model.whatif.WhatifPackage.Literals;
import org.amberyard.workbench.language.Words;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.osgi.util.NLS;

/**
 * Kinds and fields that an uncertain input or a change of a scenario points at. The study keeps their names of the data dictionary;
 * the window shows them, and takes them as typed, by the labels that they have everywhere else.
 */
final class PlaceNames {
    private static final String SEPARATOR = ";";

    private final EStructuralFeature kind;
    private final boolean ofKind;

    private PlaceNames(EStructuralFeature kind, boolean ofKind) {
        this.kind = kind;
        this.ofKind = ofKind;
    }

    /** The names that a field holds; empty for other fields. */
    static Optional<PlaceNames> of(EStructuralFeature feature) {
        if (feature == Literals.UNCERTAIN_INPUT__KIND || feature == Literals.UNCERTAIN_INPUT__FIELD) {
            return Optional.of(new PlaceNames(Literals.UNCERTAIN_INPUT__KIND, feature == Literals.UNCERTAIN_INPUT__KIND));
        }
        if (feature == Literals.SCENARIO_CHANGE__KIND || feature == Literals.SCENARIO_CHANGE__FIELD) {
            return Optional.of(new PlaceNames(Literals.SCENARIO_CHANGE__KIND, feature == Literals.SCENARIO_CHANGE__KIND));
        }
        return Optional.empty();
    }

    /** The field of an element that holds the kind, on which the names of fields hang. */
    EStructuralFeature kind() {
        return kind;
    }

    /** What is shown for a name that an element holds; a name that the model does not have stays as it is. */
    String shown(EObject element, String name) {
        if (name == null) {
            return "";
        }
        if (ofKind) {
            return kinds().filter(k -> k.getName().equals(name)).findFirst().map(Words::kind).orElse(name);
        }
        List<EStructuralFeature> fields = fields((String) element.eGet(kind));
        return Arrays.stream(name.split(SEPARATOR)).map(String::strip).map(part -> fields.stream().filter(f -> f.getName().equals(part))
                .findFirst().map(f -> Words.field(f).label()).orElse(part)).collect(Collectors.joining(SEPARATOR + " "));
    }

    /** What may be chosen for an element; null for one that is yet to come. */
    List<String> choices(EObject element) {
        return ofKind ? kinds().filter(k -> !variable(k).isEmpty()).map(Words::kind).sorted().toList()
                : element == null ? List.of() : variable(named((String) element.eGet(kind))).stream().map(f -> Words.field(f).label()).toList();
    }

    /**
     * The name of what was typed: a label, or the name itself.
     *
     * @param kindName the kind that has the field; null where none is known
     * @throws FieldRefusal when there is no such kind, or the kind no such field
     */
    String stored(String kindName, String typed) throws FieldRefusal {
        if (ofKind) {
            return kinds().filter(k -> isMeant(typed, k.getName(), Words.kind(k))).findFirst().map(EClass::getName)
                    .orElseThrow(() -> new FieldRefusal(NLS.bind(Messages.Place_noKind, typed)));
        }
        StringBuilder names = new StringBuilder();
        for (String part : typed.split(SEPARATOR)) {
            names.append(names.isEmpty() ? "" : SEPARATOR + " ").append(fieldName(kindName, part.strip()));
        }
        return names.toString();
    }

    private static String fieldName(String kindName, String typed) throws FieldRefusal {
        return fields(kindName).stream().filter(f -> isMeant(typed, f.getName(), Words.field(f).label())).findFirst()
                .map(EStructuralFeature::getName).orElseThrow(() -> new FieldRefusal(kindName == null ? Messages.Place_kindFirst
                        : NLS.bind(Messages.Place_noField, typed, named(kindName) == null ? kindName : Words.kind(named(kindName)))));
    }

    private static boolean isMeant(String typed, String name, String label) {
        return typed.strip().equals(name) || typed.strip().toLowerCase(Locale.ROOT).equals(label.toLowerCase(Locale.ROOT));
    }

    private static Stream<EClass> kinds() {
        return ModelPackages.all().stream().flatMap(p -> p.getEClassifiers().stream()).filter(EClass.class::isInstance).map(EClass.class::cast);
    }

    private static EClass named(String name) {
        return kinds().filter(k -> k.getName().equals(name)).findFirst().orElse(null);
    }

    /** A kind that others extend may be named with a field that only some of them have. */
    private static List<EStructuralFeature> fields(String kindName) {
        EClass kind = named(kindName);
        return kind == null ? List.of() : Stream.concat(kind.getEAllStructuralFeatures().stream(), kinds().filter(kind::isSuperTypeOf)
                .flatMap(k -> k.getEAllStructuralFeatures().stream())).distinct().toList();
    }

    private static List<EStructuralFeature> variable(EClass kind) {
        return kind == null ? List.of() : fields(kind.getName()).stream().filter(f -> FieldWords.isNumber(f) || FieldWords.isChoice(f)).toList();
    }
}
