package org.amberyard.model.meta;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.Effect;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Where an input stands in a study.
 *
 * @param element the element that holds it
 * @param field the field of the element
 */
public record InputPlace(EObject element, EStructuralFeature field) {
    /** Name that means every element of a kind. */
    public static final String EVERY = "*";

    /**
     * The first place of that description; empty where the study has none.
     *
     * @param kind class of the element or one that it extends, such as {@code FuelPrice}
     * @param name name of the element, also with its owner's before it ({@code owner / name}); blank for the first of the kind
     * @param field field of the element, such as {@code pricePerL}
     */
    public static Optional<InputPlace> of(Study study, String kind, String name, String field) {
        return elements(study).filter(e -> e.eClass().getEStructuralFeature(field) != null && isKind(e, kind) && isNamed(e, name))
                .findFirst().map(e -> new InputPlace(e, e.eClass().getEStructuralFeature(field)));
    }

    /** The first element of a kind and name, as for {@link #of}; empty where the study has none. */
    public static Optional<EObject> element(Study study, String kind, String name) {
        return elements(study).filter(e -> isKind(e, kind) && isNamed(e, name)).findFirst();
    }

    private static Stream<EObject> elements(Study study) {
        Iterable<EObject> all = study::eAllContents;
        return StreamSupport.stream(all.spliterator(), false);
    }

    /**
     * All places of a description that may mean several: an element named {@code *} means every one of the kind, and fields may
     * be several, separated by semicolons. Empty where the study lacks one of the fields.
     */
    public static List<InputPlace> all(Study study, String kind, String name, String fields) {
        List<InputPlace> places = new ArrayList<>();
        for (String field : fields.split(";")) {
            List<InputPlace> of = EVERY.equals(name) ? every(study, kind, field.strip())
                    : of(study, kind, name, field.strip()).stream().toList();
            if (of.isEmpty()) {
                return List.of();
            }
            places.addAll(of);
        }
        return places;
    }

    private static List<InputPlace> every(Study study, String kind, String field) {
        return elements(study).filter(e -> e.eClass().getEStructuralFeature(field) != null && isKind(e, kind))
                .map(e -> new InputPlace(e, e.eClass().getEStructuralFeature(field))).toList();
    }

    private static boolean isKind(EObject element, String kind) {
        return element.eClass().getName().equals(kind)
                || element.eClass().getEAllSuperTypes().stream().anyMatch(c -> c.getName().equals(kind));
    }

    private static boolean isNamed(EObject element, String name) {
        return name == null || name.isBlank() || ElementNames.of(element).equals(name) || element.eContainer() != null
                && (ElementNames.of(element.eContainer()) + " / " + ElementNames.of(element)).equals(name);
    }

    /** What a field that holds a number would hold when another number has its effect on it. */
    public static double after(Effect effect, double now, double number) {
        return switch (effect) {
            case TIMES -> now * number;
            case PLUS -> now + number;
            case VALUE -> number;
        };
    }

    /** What the field holds. */
    public Object value() {
        return element.eGet(field);
    }
}
