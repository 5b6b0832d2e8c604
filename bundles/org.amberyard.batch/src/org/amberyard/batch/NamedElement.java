package org.amberyard.batch;

import java.util.List;
import java.util.stream.Collectors;
import org.amberyard.model.meta.ElementNames;
import org.eclipse.emf.ecore.EObject;

/** Finds the element of a study that a word of the command line names. */
final class NamedElement {
    private NamedElement() {
    }

    static <T extends EObject> T of(String argument, String name, List<T> elements) throws WrongUse {
        return elements.stream().filter(e -> ElementNames.of(e).equals(name)).findFirst()
                .orElseThrow(() -> new WrongUse(argument + " is “" + name + "”; " + allowed(elements)));
    }

    private static String allowed(List<? extends EObject> elements) {
        return elements.isEmpty() ? "the study has none to name." : "it must be one of "
                + elements.stream().map(ElementNames::of).collect(Collectors.joining(", ")) + ".";
    }
}
