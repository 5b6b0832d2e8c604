package org.amberyard.workbench.fields;

import java.util.Comparator;
import org.amberyard.core.units.UnitSystem;
import org.eclipse.emf.ecore.EObject;

/** A column that is computed from the elements of a table; it takes no entries. */
public sealed interface ComputedColumn permits ComputedFigure, ComputedWords {

    /** Name of the column. */
    String label();

    /** What it holds, in a sentence. */
    String meaning();

    /** Name with the unit. */
    String header(UnitSystem system);

    /** What it holds of an element, for reading. */
    String shown(EObject element, UnitSystem system);

    /** The same for copying. */
    String fullText(EObject element, UnitSystem system);

    /** True for figures. */
    boolean isFigure();

    /** Order of the elements by what it holds of them. */
    Comparator<EObject> order();
}
