package org.amberyard.model.meta;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Every kind of element and every field of a study with its meaning, as the model itself tells it. */
public final class DataDictionary {
    private DataDictionary() {
    }

    /**
     * One line of the dictionary: a kind of element, or one of its fields.
     *
     * @param subject Ecore package, for example {@code routes}
     * @param element Ecore class that defines the field, for example {@code Run}
     * @param field Ecore name of the field, for example {@code distanceKm}; empty on the line of the kind itself
     * @param label name for people
     * @param unit stored unit; empty when there is none
     * @param range values allowed, in the stored unit; the choices of an enumeration; the kind that a reference takes
     * @param defaultValue stored default; empty when there is none
     * @param defaultSource where the default comes from
     * @param documentation what it means
     */
    public record Row(String subject, String element, String field, String label, String unit, String range,
            String defaultValue, String defaultSource, String documentation) {

        /** True for a line that speaks of a kind of element, not of one of its fields. */
        public boolean isElement() {
            return field.isEmpty();
        }
    }

    /** All lines: each kind of element followed by the fields that it defines itself, inherited ones left out. */
    public static List<Row> rows() {
        return rows(ModelWords.ENGLISH);
    }

    /** The same with labels, meanings and choices of a language. */
    public static List<Row> rows(ModelWords words) {
        List<Row> rows = new ArrayList<>();
        for (EPackage subject : ModelPackages.all()) {
            for (EClassifier classifier : subject.getEClassifiers()) {
                if (classifier instanceof EClass type) {
                    rows.add(elementRow(type, words));
                    type.getEStructuralFeatures().forEach(f -> rows.add(fieldRow(f, words)));
                }
            }
        }
        return List.copyOf(rows);
    }

    private static Row elementRow(EClass type, ModelWords words) {
        return new Row(type.getEPackage().getName(), type.getName(), "", words.kind(type), "", "", "", "",
                words.meaning(type));
    }

    private static Row fieldRow(EStructuralFeature feature, ModelWords words) {
        FieldInfo info = words.field(feature);
        EClass type = feature.getEContainingClass();
        String literal = feature.getDefaultValueLiteral();
        return new Row(type.getEPackage().getName(), type.getName(), feature.getName(), info.label(), info.unitToken(),
                range(feature, info, words), literal == null ? "" : literal, info.defaultSource(), info.documentation());
    }

    private static String range(EStructuralFeature feature, FieldInfo info, ModelWords words) {
        if (feature instanceof EReference reference) {
            return words.kind(reference.getEReferenceType());
        }
        if (feature.getEType() instanceof EEnum choices) {
            return choices.getELiterals().stream().map(words::choice).collect(Collectors.joining(", "));
        }
        String lower = info.above().isPresent() ? "above " + plain(info.above()) : plain(info.min());
        String upper = plain(info.max());
        return upper.isEmpty() ? lower : lower + " to " + upper;
    }

    private static String plain(OptionalDouble limit) {
        return limit.isEmpty() ? "" : PlainNumber.text(limit.getAsDouble());
    }
}
