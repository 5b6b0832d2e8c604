package org.amberyard.model.validation;

import org.amberyard.model.SmallStudy;
import org.amberyard.model.whatif.Shape;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatIf;
import org.amberyard.model.whatif.WhatifFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class TwoInputsRuleTest {
    private final SmallStudy small = new SmallStudy();
    private final WhatIf whatIf = WhatifFactory.eINSTANCE.createWhatIf();
    private UncertainInput diesel;
    private UncertainInput gasoline;

    @BeforeEach
    void addInputs() {
        small.study.setWhatIf(whatIf);
        diesel = add("Diesel price", "diesel");
        gasoline = add("Gasoline price", "gasoline");
    }

    private UncertainInput add(String name, String fuel) {
        UncertainInput input = WhatifFactory.eINSTANCE.createUncertainInput();
        input.setName(name);
        input.setKind("FuelPrice");
        input.setElement(fuel);
        input.setField("pricePerL");
        whatIf.getInputs().add(input);
        return input;
    }

    @Test
    void twoInputsOfARangeAreFineAndSoIsNone() {
        Said.of(small);
        whatIf.setGridUpward(diesel);
        Said.of(small);
        whatIf.setGridAcross(gasoline);
        Said.of(small);
    }

    @Test
    void oneInputDoesNotRunBothWays() {
        whatIf.setGridAcross(diesel);
        whatIf.setGridUpward(diesel);
        Said.of(small, "WARNING: What if: “Diesel price” runs across the grid already, so there is no grid; choose another input to run "
                + "upward, or none.");
    }

    /** Of one input there is no grid, whatever its shape; that another would take its place were not so. */
    @Test
    void aListOrAnInputOfOneValueThatRunsBothWaysIsToldOnceAndTheSame() {
        whatIf.setGridAcross(diesel);
        whatIf.setGridUpward(diesel);
        String none = "WARNING: What if: “Diesel price” runs across the grid already, so there is no grid; choose another input to run "
                + "upward, or none.";
        diesel.setShape(Shape.LIST);
        diesel.setChoices("0.8; 1.2");
        Said.of(small, none);
        diesel.setShape(Shape.OBSERVED);
        diesel.setChoices("1; 1");
        Said.of(small, none);
    }

    @Test
    void aListHasNothingBetweenItsValues() {
        gasoline.setShape(Shape.LIST);
        gasoline.setChoices("0.8; 1.2");
        whatIf.setGridAcross(gasoline);
        whatIf.setGridUpward(diesel);
        Said.of(small, "WARNING: What if: “Gasoline price” is a list, which has nothing between its values, so the grid takes the input that "
                + "decides most in its place; choose an input of another shape for the grid, or none.");
    }

    @Test
    void stepsAreFewEnoughToBeWorkedOut() {
        whatIf.setGridColumns(25);
        whatIf.setGridRows(52);
        Said.of(small, "ERROR: What if: grid rows is 52; it must be at most 51.");
    }
}
