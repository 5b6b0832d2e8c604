package org.amberyard.workbench.fields;

import java.util.Comparator;
import org.eclipse.emf.ecore.EObject;

/** Elements by the value of a field: numbers by size, everything else by its text, digits in it by their number. */
final class FieldOrder implements Comparator<EObject> {

    private final Field field;

    FieldOrder(Field field) {
        this.field = field;
    }

    @Override
    public int compare(EObject a, EObject b) {
        Object first = a.eGet(field.feature());
        Object second = b.eGet(field.feature());
        if (first instanceof Number x && second instanceof Number y) {
            return Double.compare(x.doubleValue(), y.doubleValue());
        }
        return naturally(field.fullText(a), field.fullText(b));
    }

    /** Bus 9 stands before bus 12. */
    private static int naturally(String a, String b) {
        String[] first = a.split("(?<=\\d)(?=\\D)|(?<=\\D)(?=\\d)");
        String[] second = b.split("(?<=\\d)(?=\\D)|(?<=\\D)(?=\\d)");
        for (int i = 0; i < Math.min(first.length, second.length); i++) {
            boolean numbers = first[i].matches("\\d{1,9}") && second[i].matches("\\d{1,9}");
            int order = numbers ? Integer.compare(Integer.parseInt(first[i]), Integer.parseInt(second[i]))
                    : first[i].compareToIgnoreCase(second[i]);
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(first.length, second.length);
    }
}
