package org.amberyard.model.meta;

import java.util.Optional;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.Effect;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Where an input stands in a study.
 *
 * @param element the element that holds it
 * @param field the field of the element
 */
public record InputPlace(EObject element, EStructuralFeature field) {

    /**
     * The first place of that description; empty where the study has none.
     *
     * @param kind class of the element or one that it extends, such as {@code FuelPrice}
     * @param name name of the element, also with its owner's before it ({@code owner / name}); blank for the first of the kind
     * @param field field of the element, such as {@code pricePerL}
     */
    public static Optional<InputPlace> of(Study study, String kind, String name, String field) {
        for (TreeIterator<EObject> all = study.eAllContents(); all.hasNext();) {
            EObject element = all.next();
            EStructuralFeature feature = element.eClass().getEStructuralFeature(field);
            if (feature != null && isKind(element, kind) && isNamed(element, name)) {
                return Optional.of(new InputPlace(element, feature));
            }
        }
        return Optional.empty();
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
