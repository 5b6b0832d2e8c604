package org.amberyard.workbench.fields;

import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.eclipse.emf.ecore.EObject;

/**
 * A column whose figures are computed from the elements of a table; it takes no entries.
 *
 * @param label name of the column
 * @param meaning what it holds, in a sentence
 * @param unit unit of the figure
 * @param decimals decimals shown
 * @param figure figure of an element in the stored unit; not a number where there is none
 */
public record ComputedColumn(String label, String meaning, Unit unit, int decimals, ToDoubleFunction<EObject> figure) {
    private static final String MISSING = "–";

    String header(UnitSystem system) {
        String symbol = unit.symbol(system, "");
        return symbol.isEmpty() ? label : label + " (" + symbol + ")";
    }

    /** The figure of an element for reading, with the minus of print. */
    String shown(EObject element, UnitSystem system) {
        return fullText(element, system).replace('-', '−');
    }

    /** The figure of an element for copying, with the minus of keyboards, which spreadsheets take. */
    String fullText(EObject element, UnitSystem system) {
        double stored = figure.applyAsDouble(element);
        return Double.isNaN(stored) ? MISSING
                : String.format(Locale.getDefault(Locale.Category.FORMAT), "%,." + decimals + "f", unit.show(stored, system));
    }
}
