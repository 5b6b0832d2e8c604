package org.amberyard.study;

import java.math.BigDecimal;
import java.math.MathContext;
import org.amberyard.core.units.Unit;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Figures for sentences: rounded for reading, in a study's units. */
public final class RoundedText {
    private static final MathContext DIGITS = new MathContext(3);

    private final Study study;

    /** Figures in the units of a study. */
    public RoundedText(Study study) {
        this.study = study;
    }

    /** A value of a field to three digits with its unit: {@code 1.31 kWh/mi}. */
    public String of(EStructuralFeature field, double value) {
        Unit unit = Unit.ofToken(FieldInfo.of(field).unitToken()).orElse(Unit.ONE);
        BigDecimal shown = BigDecimal.valueOf(unit.show(value, StudyUnits.of(study))).round(DIGITS);
        return FieldFormat.of(field, study).textWithUnit(unit.store(shown.doubleValue(), StudyUnits.of(study)));
    }

    /** A share as a percentage to three digits. */
    static String percent(double share) {
        return BigDecimal.valueOf(100 * share).round(DIGITS).stripTrailingZeros().toPlainString() + " %";
    }
}
