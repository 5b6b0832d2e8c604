package org.amberyard.workbench.fields;

import java.util.Comparator;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.eclipse.emf.ecore.EObject;

/**
 * A column of figures that are computed from the elements of a table.
 *
 * @param label name of the column
 * @param meaning what it holds, in a sentence
 * @param unit unit of the figure
 * @param decimals decimals shown
 * @param figure figure of an element in the stored unit; not a number where there is none
 */
public record ComputedFigure(String label, String meaning, Unit unit, int decimals, ToDoubleFunction<EObject> figure)
        implements ComputedColumn {
    private static final String MISSING = "–";

    @Override
    public String header(UnitSystem system) {
        String symbol = unit.symbol(system, "");
        return symbol.isEmpty() ? label : label + " (" + symbol + ")";
    }

    /** With the minus of print. */
    @Override
    public String shown(EObject element, UnitSystem system) {
        return fullText(element, system).replace('-', '−');
    }

    /** With the minus of keyboards, which spreadsheets take. */
    @Override
    public String fullText(EObject element, UnitSystem system) {
        double stored = figure.applyAsDouble(element);
        return Double.isNaN(stored) ? MISSING
                : String.format(Locale.getDefault(Locale.Category.FORMAT), "%,." + decimals + "f", unit.show(stored, system));
    }

    @Override
    public boolean isFigure() {
        return true;
    }

    @Override
    public Comparator<EObject> order() {
        return Comparator.comparingDouble(figure);
    }
}
