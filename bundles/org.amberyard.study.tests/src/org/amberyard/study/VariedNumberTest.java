package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.core.units.Unit;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.UnitChoice;
import org.amberyard.model.whatif.Effect;
import org.amberyard.model.whatif.ScenarioChange;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatifPackage.Literals;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The numbers of the example's what-if in the units of the study. */
class VariedNumberTest {
    private Study study;
    private ScenarioChange diesel;

    @BeforeEach
    void load() throws Exception {
        study = ExampleStudy.load();
        diesel = study.getWhatIf().getScenarios().get(0).getChanges().get(0);
    }

    private String shown(EObject owner, EStructuralFeature field) {
        return VariedNumber.text(FieldFormat.of(field, study), study, owner, field, owner.eGet(field));
    }

    private double typed(EObject owner, EStructuralFeature field, String text) throws FieldFormatException {
        return (double) VariedNumber.format(FieldFormat.of(field, study), study, owner, field).parse(text);
    }

    /** The example has diesel at 5 dollars a gallon, of 3.785411784 L each. */
    @Test
    void aValueIsInTheUnitOfItsField() throws FieldFormatException {
        assertEquals("5 USD/gal", shown(diesel, Literals.SCENARIO_CHANGE__NUMBER));
        assertEquals(6 / 3.785411784, typed(diesel, Literals.SCENARIO_CHANGE__NUMBER, "6"), 1e-12);
        assertEquals(6 / 3.785411784, typed(diesel, Literals.SCENARIO_CHANGE__NUMBER, "$6 USD/gal"), 1e-12);
        assertEquals(1.5, typed(diesel, Literals.SCENARIO_CHANGE__NUMBER, "1.5 USD/L"), 1e-12);
        study.getSettings().setUnits(UnitChoice.METRIC);
        assertEquals("1.3209 USD/L", shown(diesel, Literals.SCENARIO_CHANGE__NUMBER));
    }

    @Test
    void aFactorHasNoUnit() throws FieldFormatException {
        diesel.setEffect(Effect.TIMES);
        diesel.setNumber(1.2);
        assertEquals("1.2", shown(diesel, Literals.SCENARIO_CHANGE__NUMBER));
        assertEquals(1.3, typed(diesel, Literals.SCENARIO_CHANGE__NUMBER, "1.3"), 0);
    }

    /** Two degrees Celsius more are 3.6 degrees Fahrenheit more, not 35.6. */
    @Test
    void aDifferenceOfTemperaturesHasAnotherZero() throws FieldFormatException {
        UncertainInput weather = study.getWhatIf().getInputs().get(0);
        weather.setKind("MonthClimate");
        weather.setElement("*");
        weather.setField("meanLowC; meanHighC");
        weather.setEffect(Effect.PLUS);
        weather.setHigh(2);
        assertEquals("3.6 °F", shown(weather, Literals.UNCERTAIN_INPUT__HIGH));
        assertEquals(-1, typed(weather, Literals.UNCERTAIN_INPUT__LOW, "-1.8"), 1e-12);
        weather.setEffect(Effect.VALUE);
        assertEquals("35.6 °F", shown(weather, Literals.UNCERTAIN_INPUT__HIGH));
    }

    @Test
    void sharesArePercent() throws FieldFormatException {
        UncertainInput rise = study.getWhatIf().getInputs().get(1);
        assertEquals("−1 %", shown(rise, Literals.UNCERTAIN_INPUT__LOW));
        assertEquals(0.025, typed(rise, Literals.UNCERTAIN_INPUT__HIGH, "2.5"), 1e-12);
    }

    @Test
    void whatPointsAtNothingOrAtSeveralUnitsHasNone() {
        diesel.setField("price");
        assertEquals(Unit.ONE, VariedNumber.unit(study, diesel));
        diesel.setField(null);
        assertEquals(Unit.ONE, VariedNumber.unit(study, diesel));
        diesel.setField("pricePerL; escalationPerYear");
        assertEquals(Unit.ONE, VariedNumber.unit(study, diesel));
    }

    /** Where studies or plans are compared, and where a rule speaks of it. */
    @Test
    void otherPlacesSayItInTheSameWay() {
        Study other = EcoreUtil.copy(study);
        other.getWhatIf().getScenarios().get(0).getChanges().get(0).setNumber(4 / 3.785411784);
        assertTrue(InputDifferences.of(List.of(study, other), study).stream().anyMatch(d -> d.values().equals(List.of("5 USD/gal", "4 USD/gal"))));
        diesel.setNumber(-1 / 3.785411784);
        assertTrue(StudyFindings.of(study).stream().anyMatch(f -> f.message().contains("at −1 USD/gal price would be −1 USD/gal, which the field")),
                StudyFindings.of(study).toString());
    }
}
