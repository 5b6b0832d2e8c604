package org.amberyard.study.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.amberyard.core.money.BreakEven;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.variants.BreakEvenLine;
import org.amberyard.core.variants.BreakEvensAlone;
import org.amberyard.core.variants.TwoTogether;
import org.amberyard.core.whatif.BreakEvenCurve;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What is evaluated as a whole though draws are read off surfaces; on a few routes, since all are driven anew each time. */
class FittedBreakEvensTest {
    private static final int PLAN = 1;
    private static final int ONE_ROUTE_IN = 9;
    private static final StudyEvaluator EVALUATOR = new StudyEvaluator();

    private static Study study;
    private static WhatIfRun run;

    @BeforeAll
    static void runIt() throws StudyFileException {
        study = ExampleWhatIf.ofWeather(500);
        ExampleWhatIf.thin(study, ONE_ROUTE_IN, 2);
        run = new WhatIfRun(study, EVALUATOR.evaluate(StudyCompiler.compile(study)), 2, Optional.empty());
        run.run(Progress.NONE, soFar -> {});
    }

    @Test
    void sharesTellTheErrorOfTheDraws() {
        assertEquals(run.results().all().orElseThrow().missed(), run.results().shares().orElseThrow().missed());
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
}
