package org.amberyard.workbench.fields;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.study.Study;
import org.amberyard.study.StudyUnits;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Numbers at a length for reading: a converted 29.9338 km reads 18.6 mi, not 18.59998757. */
final class ShownNumber {

    private static final int DIGITS = 5;

    private final Unit unit;
    private final UnitSystem system;

    ShownNumber(EStructuralFeature feature, Study study) {
        this.unit = Unit.ofToken(FieldInfo.of(feature).unitToken()).orElse(Unit.ONE);
        this.system = StudyUnits.of(study);
    }

    /** The stored value whose shown figure has a handful of digits; whole parts are never rounded away. */
    Object rounded(Number stored) {
        double figure = unit.show(stored.doubleValue(), system);
        if (stored instanceof Integer || !Double.isFinite(figure) || figure == 0) {
            return stored;
        }
        BigDecimal exact = BigDecimal.valueOf(figure);
        int whole = exact.precision() - exact.scale();
        BigDecimal read = whole >= DIGITS ? exact.setScale(0, RoundingMode.HALF_UP) : exact.round(new MathContext(DIGITS));
        return unit.store(read.doubleValue(), system);
    }
}
