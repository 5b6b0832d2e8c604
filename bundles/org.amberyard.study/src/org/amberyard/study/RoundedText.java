package org.amberyard.study;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Figures for sentences: rounded for reading, in a study's units. */
public final class RoundedText {
    private static final MathContext DIGITS = new MathContext(3);
    private static final int SHOWN_DIGITS = 5;

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

    /**
     * A value as its field shows it, with its unit: numbers of a handful of digits whose whole parts are never rounded away, anything else as it
     * is; blank for a missing one.
     */
    public String shown(EStructuralFeature field, Object value) {
        return FieldFormat.of(field, study).textWithUnit(value instanceof Double number ? readable(field, number) : value);
    }

    /** A limit of a field as {@link #shown}, but that zero is zero. */
    public String limit(EStructuralFeature field, Number value) {
        return FieldFormat.of(field, study).limitWithUnit(value instanceof Double number ? readable(field, number) : value);
    }

    /** The stored value whose shown figure has a handful of digits: a converted 29.9338 km reads 18.6 mi, not 18.59998757. */
    public double readable(EStructuralFeature field, double stored) {
        return readable(Unit.ofToken(FieldInfo.of(field).unitToken()).orElse(Unit.ONE), stored);
    }

    /**
     * The same of a default, which was chosen as a round figure in another unit than the one shown: to three digits, whole parts whole. 200 m
     * read 656 ft, not 656.17. A default that is shown in the unit in which it was chosen stays as it is.
     */
    public double readableDefault(EStructuralFeature field, double stored) {
        Unit unit = Unit.ofToken(FieldInfo.of(field).unitToken()).orElse(Unit.ONE);
        if (unit.show(stored, StudyUnits.of(study)) == unit.show(stored, UnitSystem.METRIC)) {
            return readable(unit, stored);
        }
        return readable(unit, stored, DIGITS.getPrecision(), RoundingMode.HALF_UP);
    }

    /**
     * The same of a limit of a field, which the shown figure keeps: a greatest elevation of 4500 m reads 14,763 ft, as 14,764 ft would be too much.
     *
     * @param most true for the greatest value, false for the least
     */
    public double readableLimit(EStructuralFeature field, double limit, boolean most) {
        Unit unit = Unit.ofToken(FieldInfo.of(field).unitToken()).orElse(Unit.ONE);
        double nearest = readable(unit, limit);
        boolean kept = most ? nearest <= limit : nearest >= limit;
        return kept ? nearest : readable(unit, limit, SHOWN_DIGITS, most ? RoundingMode.FLOOR : RoundingMode.CEILING);
    }

    /** The same of a value in a unit. */
    public double readable(Unit unit, double stored) {
        return readable(unit, stored, SHOWN_DIGITS, RoundingMode.HALF_UP);
    }

    private double readable(Unit unit, double stored, int digits, RoundingMode rounding) {
        double figure = unit.show(stored, StudyUnits.of(study));
        if (!Double.isFinite(figure) || figure == 0) {
            return stored;
        }
        BigDecimal exact = BigDecimal.valueOf(figure);
        BigDecimal read = exact.precision() - exact.scale() >= digits ? exact.setScale(0, rounding) : exact.round(new MathContext(digits, rounding));
        return unit.store(read.doubleValue(), StudyUnits.of(study));
    }

    /** A share as a percentage to three digits. */
    static String percent(double share) {
        return BigDecimal.valueOf(100 * share).round(DIGITS).stripTrailingZeros().toPlainString() + " %";
    }
}
