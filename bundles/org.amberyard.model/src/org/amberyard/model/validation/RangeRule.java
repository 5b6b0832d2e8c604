package org.amberyard.model.validation;

import java.util.OptionalDouble;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.FieldWords;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

/** Every number is one, and lies within the limits that the model states for its field. */
final class RangeRule implements Rule {
    private static final String SHARE = "share";

    @Override
    public void check(Study study, Findings findings) {
        Elements.of(study).forEach(element -> element.eClass().getEAllAttributes().forEach(attribute -> {
            if (element.eGet(attribute) instanceof Number number) {
                check(element, attribute, number.doubleValue(), findings);
            }
        }));
    }

    private static void check(EObject element, EAttribute field, double value, Findings findings) {
        FieldInfo info = FieldInfo.of(field);
        if (!Double.isFinite(value)) {
            findings.error(element, field, Findings.label(field) + " is not a number; enter one.");
        } else if (!info.allows(value)) {
            findings.error(element, field, findings.fact(element, field) + "; it must be "
                    + broken(element, field, value, info, findings) + "." + hint(element, field, value, info, findings));
        }
    }

    /** The limit that is broken: who is below one need not read of the other. */
    private static String broken(EObject element, EAttribute field, double value, FieldInfo info, Findings findings) {
        if (info.above().isPresent() && value <= info.above().getAsDouble()) {
            return "above " + limit(element, field, info.above(), findings);
        }
        return info.min().isPresent() && value < info.min().getAsDouble()
                ? "at least " + limit(element, field, info.min(), findings)
                : "at most " + limit(element, field, info.max(), findings);
    }

    private static String limit(EObject element, EAttribute field, OptionalDouble limit, Findings findings) {
        return FieldInfo.zeroIsMissing(field) && limit.getAsDouble() == 0 ? "0" : findings.value(element, field, ofType(field, limit.getAsDouble()));
    }

    /** Numbers of a whole-number field stay whole, as whoever renders them expects. */
    private static Object ofType(EAttribute field, double number) {
        if (FieldWords.isWhole(field)) {
            return (int) number;
        }
        return number;
    }

    /** A percentage that was stored as it reads is a hundred times the share. */
    private static String hint(EObject element, EAttribute field, double value, FieldInfo info, Findings findings) {
        double share = value / 100;
        boolean looksLikePercent = info.unitToken().equals(SHARE) && Math.abs(value) > 1 && info.allows(share);
        return looksLikePercent ? " Was " + findings.value(element, field, share) + " meant?" : "";
    }
}
