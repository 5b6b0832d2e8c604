package org.amberyard.workbench.fields;

import java.util.Comparator;
import java.util.function.Function;
import org.amberyard.core.units.UnitSystem;
import org.eclipse.emf.ecore.EObject;

/**
 * A column that says something of each element of a table.
 *
 * @param label name of the column
 * @param meaning what it says, in a sentence
 * @param words what it says of an element; blank for nothing
 */
public record ComputedWords(String label, String meaning, Function<EObject, String> words) implements ComputedColumn {

    @Override
    public String header(UnitSystem system) {
        return label;
    }

    @Override
    public String shown(EObject element, UnitSystem system) {
        return words.apply(element);
    }

    @Override
    public String fullText(EObject element, UnitSystem system) {
        return words.apply(element);
    }

    @Override
    public boolean isFigure() {
        return false;
    }

    @Override
    public Comparator<EObject> order() {
        return Comparator.comparing(words);
    }
}
