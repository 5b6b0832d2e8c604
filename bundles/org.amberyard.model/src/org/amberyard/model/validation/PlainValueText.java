package org.amberyard.model.validation;

import java.util.Set;
import org.amberyard.model.meta.ClockTime;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.PlainNumber;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Stored numbers with the stored unit, clock times as such, choices and elements by name. */
final class PlainValueText implements ValueText {
    private static final String CLOCK = "clock";
    /** Units that say what is counted, not in what. */
    private static final Set<String> UNPRINTED = Set.of("", "1", "count", "calendar");

    @Override
    public String text(EStructuralFeature feature, EObject owner, Object value) {
        if (value instanceof Number number) {
            return number(FieldInfo.of(feature).unitToken(), number);
        }
        if (value instanceof Enumerator choice) {
            return choice.getLiteral();
        }
        return value instanceof EObject element ? ElementNames.of(element) : String.valueOf(value);
    }

    private static String number(String unit, Number number) {
        if (unit.equals(CLOCK) && number.intValue() >= 0) {
            return ClockTime.text(number.intValue());
        }
        String text = PlainNumber.text(number.doubleValue());
        return UNPRINTED.contains(unit) ? text : text + " " + unit;
    }
}
