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

    static void check(EStructuralFeature feature, FieldFormat format, Object value, String typed) throws FieldRefusal {
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
                    new Object[] {info.label(), typed, allowed(feature, info, format)}));
        }
    }

    private static String allowed(EStructuralFeature feature, FieldInfo info, FieldFormat format) {
        String low = info.above().isPresent() ? NLS.bind(Messages.Limit_above, text(feature, format, info.above()))
                : info.min().isPresent() ? NLS.bind(Messages.Limit_atLeast, text(feature, format, info.min())) : "";
        if (info.max().isEmpty()) {
            return low;
        }
        String high = NLS.bind(Messages.Limit_atMost, text(feature, format, info.max()));
        return low.isEmpty() ? high : NLS.bind(Messages.Limit_between, low, high);
    }

    private static String text(EStructuralFeature feature, FieldFormat format, OptionalDouble limit) {
        double figure = limit.getAsDouble();
        boolean whole = feature.getEType().getInstanceClass() == int.class;
        return format.textWithUnit(whole ? (Object) (int) figure : (Object) figure);
    }
}
