package org.amberyard.study.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.amberyard.core.plan.PlanOutcome;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.StudyStage;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.variants.AllTogether;
import org.amberyard.core.whatif.Draws;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.Effect;
import org.amberyard.model.whatif.Shape;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.junit.jupiter.api.Test;

/** Draws of prices alone are those of the whole evaluation. */
class PriceDrawsTest {
    private static final int PLANS = 3;

    @Test
    void drawsOfThePricesOfTheExampleAreThoseOfItsWholeEvaluation() throws StudyFileException {
        Study study = ExampleWhatIf.example();
        study.getWhatIf().setDraws(4);
        StudyEvaluator evaluator = new StudyEvaluator();
        StudyWhatIf whatIf = new StudyWhatIf(study, evaluator.evaluate(StudyCompiler.compile(study)), 2);
        assertTrue(whatIf.byPrices());
        AllTogether run = new WhatIfParts(whatIf).allTogether(Progress.NONE);
        assertEquals(0, run.evaluatedWholly());
        StudyVariants variants = new StudyVariants(study);
        Draws draws = new UncertainInputs(study).draws(4);
        for (int draw = 0; draw < 4; draw++) {
            StudyResult whole = evaluator.evaluate(variants.at(draws.at(draw)));
            for (int plan = 0; plan < PLANS; plan++) {
                PlanOutcome outcome = PlanOutcome.of(whole.plans().get(plan));
                assertEquals(outcome.presentCost(), run.presentCosts(plan)[draw], 1e-9 * outcome.presentCost());
            }
        }
    }

    /** Debts hang on costs in ways that are not summed up; such a study is costed anew, not evaluated as a whole. */
    @Test
    void drawsOfAStudyWithALoanAreCostedAnew() throws StudyFileException {
        Study study = ExampleWhatIf.without(3);
        ExampleWhatIf.add(study, "Diesel price", "FuelPrice", "diesel", "pricePerL");
        ExampleWhatIf.add(study, "Bus price", "ElectricType", "Electric C 150", "purchasePrice");
        study.getPlans().get(1).getFinancing().add(PlansFactory.eINSTANCE.createFinancing());
        StudyEvaluator evaluator = new StudyEvaluator();
        StudyWhatIf whatIf = new StudyWhatIf(study, evaluator.evaluate(StudyCompiler.compile(study)), 2);
        AllTogether run = new WhatIfParts(whatIf).allTogether(Progress.NONE);
        assertEquals(0, run.evaluatedWholly());
        StudyVariants variants = new StudyVariants(study);
        Draws draws = new UncertainInputs(study).draws(3);
        for (int draw = 0; draw < 3; draw++) {
            PlanOutcome outcome = PlanOutcome.of(evaluator.evaluate(variants.at(draws.at(draw))).plans().get(1));
            assertEquals(outcome.presentCost(), run.presentCosts(1)[draw], 1e-9 * outcome.presentCost());
        }
    }

    /** Present cost is a straight line in prices of which none decides anything, so its mean is its value at their means. */
    @Test
    void theMeanOfAStudyThatIsLinearInItsPricesIsItsValueAtTheirMeans() throws StudyFileException {
        Study study = ExampleWhatIf.without(4000);
        UncertainInput diesel = ExampleWhatIf.add(study, "Diesel price", "FuelPrice", "diesel", "pricePerL");
        diesel.setHigh(1.5);
        UncertainInput upkeep = ExampleWhatIf.add(study, "Registration", "ElectricType", "Electric C 150", "registrationPerYear");
        upkeep.setShape(Shape.UNIFORM);
        upkeep.setLow(1);
        upkeep.setHigh(3);
        StudyEvaluator evaluator = new StudyEvaluator();
        StudyResult base = evaluator.evaluate(StudyCompiler.compile(study));
        AllTogether run = new WhatIfParts(new StudyWhatIf(study, base, 2)).allTogether(Progress.NONE);
        StudyResult atMeans = evaluator.evaluate(new StudyVariants(study).at(new double[] {1.1, 2}));
        for (int plan = 0; plan < PLANS; plan++) {
            double expected = atMeans.plans().get(plan).measures().presentCost();
            assertEquals(expected, run.moments(plan).mean(), 1e-4 * Math.abs(expected - base.plans().get(plan).measures().presentCost()));
        }
    }

    /** Whole minutes move along with the price, by one at the outermost draws only; these are no draws of prices alone. */
    @Test
    void whatAnInputReachesAtItsEndsCounts() throws StudyFileException {
        Study study = ExampleWhatIf.without(10);
        study.getDepot().setSwapCost(5);
        UncertainInput swap = ExampleWhatIf.add(study, "Swap", "Depot", "", "swapCost");
        swap.setEffect(Effect.PLUS);
        swap.setLow(-0.8);
        swap.setLikely(0);
        swap.setHigh(0.8);
        StudyResult base = new StudyEvaluator().evaluate(StudyCompiler.compile(study));
        assertTrue(new StudyWhatIf(study, base, 1).byPrices());
        swap.setField("swapCost; chargeWindowStartMin");
        assertFalse(new StudyWhatIf(study, base, 1).byPrices());
    }

    @Test
    void anInputTellsWhatItReaches() throws StudyFileException {
        Study study = ExampleWhatIf.without(10);
        ExampleWhatIf.add(study, "Diesel price", "FuelPrice", "diesel", "pricePerL");
        UncertainInput rise = ExampleWhatIf.add(study, "Demand", "CostIndex", "electric demand", "escalationPerYear");
        rise.setEffect(Effect.PLUS);
        rise.setLow(-0.02);
        rise.setLikely(0);
        rise.setHigh(0.04);
        ExampleWhatIf.add(study, "Spares", "Settings", "", "spareCoverShare");
        ExampleWhatIf.add(study, "Deceleration", "Settings", "", "decelerationMps2");
        UncertainInput policy = ExampleWhatIf.add(study, "Policy", "Depot", "", "chargingPolicy");
        policy.setShape(Shape.LIST);
        policy.setEffect(Effect.VALUE);
        policy.setChoices("at once; spread to departure");
        StudyWhatIf whatIf = new StudyWhatIf(study, new StudyEvaluator().evaluate(StudyCompiler.compile(study)), 1);
        assertFalse(whatIf.byPrices());
        List<Set<StudyStage>> stages = whatIf.stages();
        assertEquals(EnumSet.of(StudyStage.PRICES), stages.get(0));
        assertEquals(EnumSet.of(StudyStage.CHARGING, StudyStage.PRICES), stages.get(1));
        assertEquals(EnumSet.range(StudyStage.PLAN, StudyStage.PRICES), stages.get(2));
        assertEquals(EnumSet.allOf(StudyStage.class), stages.get(3));
        assertEquals(EnumSet.of(StudyStage.CHARGING, StudyStage.PRICES), stages.get(4));
    }
}
