package org.amberyard.study.whatif;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.money.BreakEven;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.variants.AllTogether;
import org.amberyard.core.variants.BreakEvenLine;
import org.amberyard.core.variants.BreakEvensAlone;
import org.amberyard.core.variants.TwoTogether;
import org.amberyard.core.whatif.BreakEvenCurve;
import org.amberyard.core.whatif.Draws;
import org.amberyard.model.depot.ChargingPolicy;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.Effect;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The weather of all months and the losses of all cabins vary; draws are read off surfaces fitted to whole evaluations. */
class FittedRunTest {
    private static final int DRAWS = 2000;
    private static final int PLAN = 1;
    private static final int PUT_BACK = 30;
    private static final StudyEvaluator EVALUATOR = new StudyEvaluator();

    private static Study study;
    private static StudyResult base;
    private static WhatIfRun run;

    @BeforeAll
    static void runIt() throws StudyFileException {
        study = ExampleWhatIf.without(DRAWS);
        study.getDepot().setChargingPolicy(ChargingPolicy.AT_ONCE);
        study.getWhatIf().setFitted(true);
        UncertainInput weather = ExampleWhatIf.add(study, "Temperature", "MonthClimate", "*", "meanLowC; meanHighC");
        weather.setEffect(Effect.PLUS);
        weather.setLow(-3);
        weather.setLikely(0);
        weather.setHigh(2);
        ExampleWhatIf.add(study, "Cabin loss", "ElectricType", "*", "cabinLossKwPerK");
        base = EVALUATOR.evaluate(StudyCompiler.compile(study));
        run = new WhatIfRun(study, base, 2, Optional.empty());
        run.run(Progress.NONE, soFar -> {
        });
    }

    @Test
    void aDrawLiesAsNearToItsWholeEvaluationAsTheErrorSays() {
        AllTogether all = run.results().all().orElseThrow();
        assertEquals(DRAWS, all.end().draws());
        double error = all.missed().presentCosts().get(PLAN);
        assertTrue(error > 0 && error < 0.001 * all.moments(PLAN).mean(), error + " of " + all.moments(PLAN).mean());
        StudyVariants variants = new StudyVariants(study);
        Draws draws = new UncertainInputs(study).draws(DRAWS);
        double costs = 0;
        double savings = 0;
        for (int draw = 0; draw < PUT_BACK; draw++) {
            StudyResult whole = EVALUATOR.evaluate(variants.at(draws.at(draw)));
            double missed = whole.plans().get(PLAN).measures().presentCost() - all.presentCosts(PLAN)[draw];
            costs += missed * missed / PUT_BACK;
            double saving = missed - whole.baseline().measures().presentCost() + all.presentCosts(0)[draw];
            savings += saving * saving / PUT_BACK;
        }
        assertEquals(1, Math.sqrt(costs) / error, 0.5);
        assertEquals(1, Math.sqrt(savings) / all.missed().savings().get(PLAN), 0.5);
    }

    @Test
    void errorsOfAppropriationsAndSharesAreToldToo() {
        AllTogether all = run.results().all().orElseThrow();
        assertTrue(all.missed().appropriations().get(PLAN).stream().allMatch(e -> e >= 0), all.missed().toString());
        assertTrue(all.missed().appropriations().get(PLAN).stream().anyMatch(e -> e > 0), all.missed().toString());
        assertEquals(all.missed(), run.results().shares().orElseThrow().missed());
    }

    /** Every change of the cheaper plan is a value that was evaluated as a whole, with the difference that it has there. */
    @Test
    void breakEvensAreNotReadOffTheSurface() {
        BreakEvenLine line = run.results().breakEven().orElseThrow();
        BreakEvensAlone alone = run.results().breakEvens().alone().orElseThrow();
        BreakEvenCurve point = line.plans().get(PLAN).get(0);
        BreakEven.Stretch first = point.at().stretches().get(0);
        double[] values = new double[2];
        values[line.first()] = first.to();
        values[line.second()] = point.other();
        assertEquals(extra(values), first.left(), 1e-6);
        for (int i = 0; i < alone.inputs().size(); i++) {
            for (BreakEven.Stretch stretch : alone.plans().get(PLAN).get(i).stretches()) {
                double[] one = {Double.NaN, Double.NaN};
                one[alone.inputs().get(i)] = stretch.to();
                assertEquals(extra(one), stretch.left(), 1e-6);
            }
        }
    }

    private static double extra(double... values) {
        StudyResult whole = EVALUATOR.evaluate(new StudyVariants(study).at(values));
        return whole.plans().get(PLAN).measures().presentCost() - whole.baseline().measures().presentCost();
    }

    /** What the two inputs together come to is not read off the surface. */
    @Test
    void theGridIsEvaluated() {
        TwoTogether grid = run.results().grid().orElseThrow();
        StudyVariants variants = new StudyVariants(study);
        for (int e : new int[] {0, 65, 120}) {
            double[] values = new double[2];
            values[grid.first()] = grid.grid().first(e);
            values[grid.second()] = grid.grid().second(e);
            StudyResult whole = EVALUATOR.evaluate(variants.at(values));
            assertEquals(whole.baseline().measures().presentCost() - whole.plans().get(PLAN).measures().presentCost(), grid.saving(PLAN)[e], 1e-6);
        }
    }

    @Test
    void keptEvaluationsGiveTheSameSurfaces() {
        WhatIfRun opened = new WhatIfRun(study, base, 1, Optional.of(run.saved()));
        assertTrue(opened.isComplete());
        assertEquals(run.results().all().orElseThrow().missed(), opened.results().all().orElseThrow().missed());
        assertArrayEquals(run.results().all().orElseThrow().presentCosts(PLAN), opened.results().all().orElseThrow().presentCosts(PLAN), 0);
    }

    @Test
    void anInputOfSeveralPlacesMovesThemTogether() {
        StudyInput warmer = new StudyVariants(study).at(new double[] {2, Double.NaN});
        for (int month = 0; month < Climate.MONTHS; month++) {
            assertEquals(base.input().duty().climate().months().get(month).normal().meanAirC() + 2,
                    warmer.duty().climate().months().get(month).normal().meanAirC(), 1e-9);
        }
    }
}
