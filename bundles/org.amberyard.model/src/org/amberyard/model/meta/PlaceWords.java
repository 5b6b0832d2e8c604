package org.amberyard.model.meta;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Kinds and fields that an element of a study points at by their names of the data dictionary, and how people read them. Files have
 * the names, people have the labels.
 */
public final class PlaceWords {
    /** Between the names of fields that move together. */
    public static final String SEPARATOR = ";";

    private PlaceWords() {
    }

    /** All kinds of elements. */
    public static Stream<EClass> kinds() {
        return ModelPackages.all().stream().flatMap(p -> p.getEClassifiers().stream()).filter(EClass.class::isInstance).map(EClass.class::cast);
    }

    /** The kind of a name such as {@code FuelPrice}; empty where there is none. */
    public static Optional<EClass> kind(String name) {
        return kinds().filter(k -> k.getName().equals(name)).findFirst();
    }

    /** Fields of a kind and of those that extend it, any of which may be named with it. */
    public static List<EStructuralFeature> fields(EClass kind) {
        return Stream.concat(kind.getEAllStructuralFeatures().stream(), kinds().filter(kind::isSuperTypeOf)
                .flatMap(k -> k.getEAllStructuralFeatures().stream())).distinct().toList();
    }

    /** Label of a kind; a name that the model does not have stays as it is. */
    public static String kindLabel(String name, ModelWords words) {
        return kind(name).map(words::kind).orElse(name);
    }

    /**
     * Labels of fields; names that the kind does not have stay as they are.
     *
     * @param kindName name of the kind that has them; may be null
     * @param names names of fields, one or several
     */
    public static List<String> fieldLabels(String kindName, String names, ModelWords words) {
        List<EStructuralFeature> fields = kind(kindName).map(PlaceWords::fields).orElse(List.of());
        return Arrays.stream(names.split(SEPARATOR)).map(String::strip).map(part -> fields.stream().filter(f -> f.getName().equals(part))
                .findFirst().map(f -> words.field(f).label()).orElse(part)).toList();
    }

    /** Labels of fields, as {@link #fieldLabels}, within a name: {@code price + rise per year}. */
    public static String fieldsInName(String kindName, String names, ModelWords words) {
        return fieldLabels(kindName, names, words).stream().map(Phrase::inName).collect(Collectors.joining(" + "));
    }
}
