package org.amberyard.model.validation;

import org.amberyard.model.SmallStudy;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.vehicles.Fuel;
import org.amberyard.model.whatif.Effect;
import org.amberyard.model.whatif.InputCorrelation;
import org.amberyard.model.whatif.Scenario;
import org.amberyard.model.whatif.ScenarioChange;
import org.amberyard.model.whatif.Shape;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatifFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class WhatIfRuleTest {
    private final SmallStudy small = new SmallStudy();
    private final UncertainInput input = WhatifFactory.eINSTANCE.createUncertainInput();

    @BeforeEach
    void addInput() {
        small.study.setWhatIf(WhatifFactory.eINSTANCE.createWhatIf());
        small.study.getWhatIf().getInputs().add(input);
        input.setName("Diesel price");
        input.setKind("FuelPrice");
        input.setElement("diesel");
        input.setField("pricePerL");
    }

    @Test
    void anInputThatIsThereIsFine() {
        Said.of(small);
    }

    @Test
    void anInputPointsAtAFieldOfTheStudy() {
        input.setField("price");
        Said.of(small, "ERROR: Uncertain input Diesel price: the study has no “price” of a fuel price named “diesel”; choose each from "
                + "its list.");
    }

    @Test
    void fieldsThatMoveTogetherAreNamedTogether() {
        input.setField("pricePerL; price");
        Said.of(small, "ERROR: Uncertain input Diesel price: the study has no “price + price” of a fuel price named “diesel”; choose each from "
                + "its list.");
    }

    @Test
    void endsRise() {
        input.setLow(1.4);
        Said.of(small, "ERROR: Uncertain input Diesel price: low, likely and high are 1.4, 1 and 1.2; enter them rising.");
    }

    @Test
    void theFieldStaysWithinItsLimits() {
        input.setEffect(Effect.VALUE);
        input.setLow(-2);
        Said.of(small, "ERROR: Uncertain input Diesel price: at -2 price would be -2 money/L, which the field does not allow.");
    }

    /** Every field that moves along stays within its limits, not only the first. */
    @Test
    void allFieldsThatMoveTogetherStayWithinTheirLimits() {
        input.setElement("*");
        input.setEffect(Effect.PLUS);
        input.setLow(-0.75);
        input.setLikely(0);
        input.setHigh(1);
        Said.of(small);
        small.study.getPrices().stream().filter(FuelPrice.class::isInstance).map(FuelPrice.class::cast)
                .filter(p -> p.getFuel() == Fuel.GASOLINE).forEach(p -> p.setPricePerL(0.5));
        Said.of(small, "ERROR: Uncertain input Diesel price: at -0.75 price would be -0.25 money/L, which the field does not allow.");
    }

    @Test
    void aScenarioStaysWithinTheLimitsOfItsFields() {
        Scenario scenario = WhatifFactory.eINSTANCE.createScenario();
        scenario.setName("Gift");
        ScenarioChange change = WhatifFactory.eINSTANCE.createScenarioChange();
        change.setKind("FuelPrice");
        change.setElement("diesel");
        change.setField("pricePerL");
        change.setEffect(Effect.VALUE);
        change.setNumber(-1);
        scenario.getChanges().add(change);
        small.study.getWhatIf().getScenarios().add(scenario);
        Said.of(small, "ERROR: Change diesel / price of scenario Gift: at -1 price would be -1 money/L, which the field does not allow.");
    }

    @Test
    void aNormalInputIsLikelyInTheMiddle() {
        input.setShape(Shape.NORMAL);
        Said.of(small);
        input.setLow(0.9);
        input.setHigh(1.6);
        Said.of(small, "ERROR: Uncertain input Diesel price: likely is 1, but a normal input lies alike on both sides; enter the middle "
                + "of low and high, 1.25, or choose another shape.");
    }

    @Test
    void theLowEndOfALogNormalInputFollowsFromTheOthers() {
        input.setShape(Shape.LOG_NORMAL);
        input.setHigh(1.45);
        Said.of(small, "ERROR: Uncertain input Diesel price: low is 0.8, but by likely and high one in ten of a log-normal input stays "
                + "below 0.69; enter that, or choose another shape.");
        input.setLow(0.69);
        Said.of(small);
    }

    @Test
    void whatWasObservedIsMoreThanOneValue() {
        input.setShape(Shape.OBSERVED);
        input.setChoices("0.9");
        Said.of(small, "ERROR: Uncertain input Diesel price: one value tells no spread; enter two or more that were observed, separated "
                + "by semicolons.");
        input.setChoices("0.9; 1.1");
        Said.of(small);
    }

    @Test
    void aChoiceIsOneOfTheFieldsWords() {
        input.setKind("Depot");
        input.setElement("");
        input.setField("chargingPolicy");
        Said.of(small, "ERROR: Uncertain input Diesel price: its field holds a choice and no number; only a list fits.");
        input.setShape(Shape.LIST);
        input.setChoices("at once; slowly");
        input.setWeights("1");
        Said.of(small, "ERROR: Uncertain input Diesel price: “slowly” is nothing that the field can hold; it can hold at once, at a set "
                + "time, spread to departure, capped, least cost.",
                "ERROR: Uncertain input Diesel price: weights are “1”; enter one of 0 or more for each of the 2 choices.");
    }

    @Test
    void aPairNamesTwoInputs() {
        InputCorrelation pair = WhatifFactory.eINSTANCE.createInputCorrelation();
        pair.setFirst(input);
        pair.setSecond(input);
        small.study.getWhatIf().getCorrelations().add(pair);
        Said.of(small, "ERROR: Correlation Diesel price and Diesel price: it pairs an input with itself; choose another one.");
    }

    @Test
    void aScenarioNamesWhatFieldsCanHold() {
        Scenario scenario = WhatifFactory.eINSTANCE.createScenario();
        scenario.setName("Slow");
        ScenarioChange change = WhatifFactory.eINSTANCE.createScenarioChange();
        change.setKind("Depot");
        change.setField("chargingPolicy");
        change.setChoice("slowly");
        scenario.getChanges().add(change);
        small.study.getWhatIf().getScenarios().add(scenario);
        Said.of(small, "ERROR: Change depot / charging policy of scenario Slow: “slowly” is nothing that the field can hold; it can hold at once, "
                + "at a set time, spread to departure, capped, least cost.");
    }
}
