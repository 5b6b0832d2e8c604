package org.amberyard.model.validation;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.model.depot.MeterBill;
import org.amberyard.model.depot.MeterBillLine;
import org.amberyard.model.depot.MeterDay;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.Phrase;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Collects findings; each message begins with the kind and name of its element. */
final class Findings {
    private final ValueText values;
    private final List<Finding> list = new ArrayList<>();

    Findings(ValueText values) {
        this.values = values;
    }

    void error(EObject element, EStructuralFeature feature, String text) {
        add(Severity.ERROR, element, feature, text);
    }

    /** An error, but of printed bills and of the days by which they are worked out again a warning: no plan rests on them. */
    void fault(EObject element, EStructuralFeature feature, String text) {
        boolean ofBills = element instanceof MeterBill || element instanceof MeterBillLine || element instanceof MeterDay;
        add(ofBills ? Severity.WARNING : Severity.ERROR, element, feature, text);
    }

    void warning(EObject element, EStructuralFeature feature, String text) {
        add(Severity.WARNING, element, feature, text);
    }

    void info(EObject element, EStructuralFeature feature, String text) {
        add(Severity.INFO, element, feature, text);
    }

    private void add(Severity severity, EObject element, EStructuralFeature feature, String text) {
        list.add(new Finding(severity, element, feature,
                Phrase.start(ElementNames.told(element)) + ": " + text));
    }

    /** A field's label inside a sentence. */
    static String label(EStructuralFeature feature) {
        return Phrase.inside(FieldInfo.of(feature).label());
    }

    /** Text of an element's value in a field. */
    String value(EObject element, EStructuralFeature feature) {
        return value(element, feature, element.eGet(feature));
    }

    /** Text of any value as one of the field's. */
    String value(EObject element, EStructuralFeature feature, Object value) {
        return values.text(feature, element, value);
    }

    /** A field's label and value: {@code top speed is 45 mph}. */
    String fact(EObject element, EStructuralFeature feature) {
        return label(feature) + " is " + value(element, feature);
    }

    List<Finding> list() {
        return list;
    }
}
