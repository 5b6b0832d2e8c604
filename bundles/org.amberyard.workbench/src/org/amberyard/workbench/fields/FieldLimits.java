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
                    new Object[] {info.label(), typed, allowed(info, format, shown)}));
        }
    }

    private static String allowed(FieldInfo info, FieldFormat format, ShownNumber shown) {
        String low = info.above().isPresent() ? NLS.bind(Messages.Limit_above, least(info.above(), format, shown))
                : info.min().isPresent() ? NLS.bind(Messages.Limit_atLeast, least(info.min(), format, shown)) : "";
        if (info.max().isEmpty()) {
            return low;
        }
        String high = NLS.bind(Messages.Limit_atMost, format.limitWithUnit((Number) shown.limit(info.max().getAsDouble(), true)));
        return low.isEmpty() ? high : NLS.bind(Messages.Limit_between, low, high);
    }

    private static String least(OptionalDouble limit, FieldFormat format, ShownNumber shown) {
        return format.limitWithUnit((Number) shown.limit(limit.getAsDouble(), false));
    }
}
