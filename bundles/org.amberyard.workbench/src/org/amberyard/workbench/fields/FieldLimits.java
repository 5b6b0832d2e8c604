package org.amberyard.workbench.fields;

import java.util.OptionalDouble;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.study.FieldFormat;
import org.amberyard.workbench.language.Words;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.osgi.util.NLS;

/** Refuses numbers outside what the model allows, at the moment that they are typed. */
final class FieldLimits {

    private FieldLimits() {
    }

    static void check(EStructuralFeature feature, FieldFormat format, ShownNumber shown, Object value, String typed) throws FieldRefusal {
        if (!(value instanceof Number number)) {
            return;
        }
        FieldInfo info = Words.field(feature);
        double figure = number.doubleValue();
        boolean tooSmall = info.min().isPresent() && figure < info.min().getAsDouble()
                || info.above().isPresent() && figure <= info.above().getAsDouble();
        boolean tooLarge = info.max().isPresent() && figure > info.max().getAsDouble();
        if (tooSmall || tooLarge) {
            throw new FieldRefusal(NLS.bind(Messages.Limit_refused,
                    new Object[] {info.label(), typed, allowed(feature, info, format, shown)}));
        }
    }

    private static String allowed(EStructuralFeature feature, FieldInfo info, FieldFormat format, ShownNumber shown) {
        String low = info.above().isPresent() ? NLS.bind(Messages.Limit_above, text(feature, format, shown, info.above()))
                : info.min().isPresent() ? NLS.bind(Messages.Limit_atLeast, text(feature, format, shown, info.min())) : "";
        if (info.max().isEmpty()) {
            return low;
        }
        String high = NLS.bind(Messages.Limit_atMost, text(feature, format, shown, info.max()));
        return low.isEmpty() ? high : NLS.bind(Messages.Limit_between, low, high);
    }

    private static String text(EStructuralFeature feature, FieldFormat format, ShownNumber shown, OptionalDouble limit) {
        double figure = limit.getAsDouble();
        boolean whole = feature.getEType().getInstanceClass() == int.class;
        return format.textWithUnit(shown.rounded(whole ? (Number) (int) figure : (Number) figure));
    }
}
