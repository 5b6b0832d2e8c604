package org.amberyard.model.meta;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.model.study.Study;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Words for what fields hold that are no numbers: literals, yes or no, names of elements. */
public final class FieldWords {
    private static final String YES = "yes";
    private static final String NO = "no";

    private FieldWords() {
    }

    /** True for fields that hold one number. */
    public static boolean isNumber(EStructuralFeature field) {
        Class<?> type = field.getEType().getInstanceClass();
        return !field.isMany() && (type == double.class || type == Double.class || isWhole(field));
    }

    /** True for fields that hold whole numbers, whether or not these may be missing. */
    public static boolean isWhole(EStructuralFeature field) {
        Class<?> type = field.getEType().getInstanceClass();
        return type == int.class || type == Integer.class;
    }

    /** True for fields of which a number may be missing: empty is not zero. */
    public static boolean mayBeMissing(EStructuralFeature field) {
        Class<?> type = field.getEType().getInstanceClass();
        return type == Double.class || type == Integer.class;
    }

    /** A number as a field that holds numbers takes it; one of whole numbers takes the nearest. */
    public static Object number(EStructuralFeature field, double number) {
        if (isWhole(field)) {
            return (int) Math.round(number);
        }
        return number;
    }

    /** True for fields that hold one thing of several that can be named. */
    public static boolean isChoice(EStructuralFeature field) {
        return !field.isMany() && field.isChangeable() && (field.getEType() instanceof EEnum
                || field.getEType().getInstanceClass() == boolean.class
                || field instanceof EReference reference && !reference.isContainment());
    }

    /** What a word stands for in a field; empty where it stands for nothing that the field can hold. */
    public static Optional<Object> value(Study study, EStructuralFeature field, String word) {
        if (field.getEType() instanceof EEnum words) {
            return Optional.ofNullable(words.getEEnumLiteralByLiteral(word)).map(EEnumLiteral::getInstance);
        }
        if (field.getEType().getInstanceClass() == boolean.class) {
            return word.equals(YES) || word.equals(NO) ? Optional.of(word.equals(YES)) : Optional.empty();
        }
        return elements(study, field).stream().filter(e -> ElementNames.of(e).equals(word)).findFirst().map(e -> (Object) e);
    }

    /** All words that a field can hold. */
    public static List<String> all(Study study, EStructuralFeature field) {
        if (field.getEType() instanceof EEnum words) {
            return words.getELiterals().stream().map(EEnumLiteral::getLiteral).toList();
        }
        if (field.getEType().getInstanceClass() == boolean.class) {
            return List.of(YES, NO);
        }
        return elements(study, field).stream().map(ElementNames::of).toList();
    }

    private static List<EObject> elements(Study study, EStructuralFeature field) {
        List<EObject> found = new ArrayList<>();
        for (TreeIterator<EObject> all = study.eAllContents(); all.hasNext();) {
            EObject element = all.next();
            if (field.getEType().isInstance(element)) {
                found.add(element);
            }
        }
        return found;
    }
}
