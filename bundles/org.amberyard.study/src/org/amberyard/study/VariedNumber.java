package org.amberyard.study;

import java.util.List;
import java.util.Set;
import org.amberyard.core.units.Unit;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.FieldWords;
import org.amberyard.model.meta.InputPlace;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.Effect;
import org.amberyard.model.whatif.ScenarioChange;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatifPackage.Literals;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Numbers of a what-if that stand for those of other fields of the study: a factor has no unit; what is added to a field, or takes its
 * place, is shown and read in the unit of that field.
 */
public final class VariedNumber {
    private static final Set<EStructuralFeature> NUMBERS = Set.of(Literals.SCENARIO_CHANGE__NUMBER, Literals.UNCERTAIN_INPUT__LOW,
            Literals.UNCERTAIN_INPUT__LIKELY, Literals.UNCERTAIN_INPUT__HIGH);

    private VariedNumber() {
    }

    /** True for a field that holds such a number. */
    public static boolean isOne(EStructuralFeature field) {
        return NUMBERS.contains(field);
    }

    /** Unit of the numbers of an uncertain input or a scenario's change; none where it points at nothing, or at fields of several units. */
    public static Unit unit(Study study, EObject owner) {
        if (owner instanceof UncertainInput input) {
            return unit(study, input.getKind(), input.getElement(), input.getField(), input.getEffect());
        }
        ScenarioChange change = (ScenarioChange) owner;
        return unit(study, change.getKind(), change.getElement(), change.getField(), change.getEffect());
    }

    private static Unit unit(Study study, String kind, String element, String fields, Effect effect) {
        if (kind == null || fields == null) {
            return Unit.ONE;
        }
        return unit(effect, InputPlace.all(study, kind, element, fields).stream().map(InputPlace::field).toList());
    }

    /** Unit of numbers with an effect on fields. A difference of temperatures has another zero than a temperature. */
    public static Unit unit(Effect effect, List<EStructuralFeature> fields) {
        List<String> tokens = fields.stream().map(f -> FieldWords.isNumber(f) ? FieldInfo.of(f).unitToken() : "").distinct().toList();
        if (effect == Effect.TIMES || tokens.size() != 1 || tokens.get(0).isEmpty()) {
            return Unit.ONE;
        }
        Unit unit = Unit.ofToken(tokens.get(0)).orElse(Unit.ONE);
        return effect == Effect.PLUS && unit == Unit.CELSIUS ? Unit.KELVIN : unit;
    }

    /** The format of any field of an element, in the unit of its own or, for such a number, of the field that it stands for. */
    public static FieldFormat format(FieldFormat own, Study study, EObject owner, EStructuralFeature field) {
        return isOne(field) ? own.in(unit(study, owner)) : own;
    }

    /** A value of any field of an element with its unit, as its field shows it: numbers at a length for reading. */
    public static String shown(FieldFormat own, Study study, EObject owner, EStructuralFeature field, Object value) {
        return !isOne(field) && value instanceof Double number ? own.textWithUnit(new RoundedText(study).readable(field, number))
                : text(own, study, owner, field, value);
    }

    /** A value of any field of an element with its unit, such numbers at a length for reading. */
    public static String text(FieldFormat own, Study study, EObject owner, EStructuralFeature field, Object value) {
        if (!isOne(field) || !(value instanceof Double number)) {
            return own.textWithUnit(value);
        }
        Unit unit = unit(study, owner);
        return own.in(unit).textWithUnit(new RoundedText(study).readable(unit, number));
    }
}
