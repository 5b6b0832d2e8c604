package org.amberyard.study;

import org.amberyard.core.consumption.CurveTerm;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.Phrase;
import org.amberyard.model.vehicles.VehiclesPackage.Literals;
import org.eclipse.emf.ecore.EAttribute;

/** The fields of an electric type that hold the terms of its consumption curve. */
final class CurveFields {
    private static final String LABEL_PREFIX = "Curve: ";

    private CurveFields() {
    }

    static EAttribute of(CurveTerm term) {
        return switch (term) {
            case BASE -> Literals.ELECTRIC_TYPE__CURVE_BASE_KWH_PER_KM;
            case COLD_RISE -> Literals.ELECTRIC_TYPE__CURVE_RISE_PER_K;
            case HEATING -> Literals.ELECTRIC_TYPE__CURVE_HEAT_KW_PER_K;
            case COOLING -> Literals.ELECTRIC_TYPE__CURVE_COOL_KW_PER_K;
        };
    }

    /** Label of a field of the curve where it is clear that a curve is spoken of. */
    static String label(EAttribute field) {
        return Phrase.start(FieldInfo.of(field).label().replaceFirst("^" + LABEL_PREFIX, ""));
    }
}
