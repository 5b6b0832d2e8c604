package org.amberyard.study.whatif;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.variants.AllTogether;
import org.amberyard.core.whatif.Draws;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
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
        study = ExampleWhatIf.ofWeather(DRAWS);
        base = EVALUATOR.evaluate(StudyCompiler.compile(study));
        run = new WhatIfRun(study, base, 2, Optional.empty());
        boolean[] enough = new boolean[1];
        run.run(share -> {
            if (enough[0]) {
                throw new CancellationException();
            }
        }, soFar -> enough[0] = soFar.all().filter(all -> all.end().draws() == DRAWS).isPresent());
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
    void errorsOfAppropriationsAreToldToo() {
        AllTogether all = run.results().all().orElseThrow();
        assertTrue(all.missed().appropriations().get(PLAN).stream().allMatch(e -> e >= 0), all.missed().toString());
        assertTrue(all.missed().appropriations().get(PLAN).stream().anyMatch(e -> e > 0), all.missed().toString());
    }

    @Test
    void keptEvaluationsGiveTheSameSurfaces() {
        WhatIfRun opened = new WhatIfRun(study, base, 1, Optional.of(run.saved()));
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
