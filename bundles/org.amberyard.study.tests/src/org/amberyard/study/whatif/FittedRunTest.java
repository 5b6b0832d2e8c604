package org.amberyard.study.whatif;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.variants.AllTogether;
import org.amberyard.core.variants.DrawnInput;
import org.amberyard.core.variants.FitCheck;
import org.amberyard.core.variants.FitErrors;
import org.amberyard.core.whatif.KeptDraws;
import org.amberyard.core.whatif.SortedDraws;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.site.MonthClimate;
import org.amberyard.model.site.SitePackage;
import org.amberyard.model.study.Study;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.FieldFormat;
import org.amberyard.study.StudyEvaluator;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The weather of all months and the losses of all cabins vary on a few routes; draws are read off surfaces, as long as these are good enough. */
class FittedRunTest {
    private static final int DRAWS = 2000;
    private static final int PLAN = 1;
    /** Just more than it takes to fit and to check. */
    private static final int EVALUATED = 78;
    /** More than all steps take. */
    private static final int GROWN = 500;
    private static final StudyEvaluator EVALUATOR = new StudyEvaluator();

    private static Study study;
    private static StudyResult base;
    private static WhatIfRun run;

    @BeforeAll
    static void runIt() throws StudyFileException {
        study = ExampleWhatIf.ofWeather(DRAWS);
        ExampleWhatIf.thin(study, 10, 1);
        base = EVALUATOR.evaluate(StudyCompiler.compile(study));
        run = drawn(study);
    }

    /** Runs until all are drawn. */
    private static WhatIfRun drawn(Study of) {
        int draws = of.getWhatIf().getDraws();
        WhatIfRun made = new WhatIfRun(of, base, 2, Optional.empty());
        boolean[] enough = new boolean[1];
        made.run(share -> {
            if (enough[0]) {
                throw new CancellationException();
            }
        }, soFar -> enough[0] = soFar.all().filter(all -> all.end().draws() == draws).isPresent());
        return made;
    }

    @Test
    void drawsAreReadOffAndTellWhatTheyMiss() {
        AllTogether all = run.results().all().orElseThrow();
        assertEquals(DRAWS, all.end().draws());
        assertEquals(0, all.evaluatedWholly());
        FitErrors missed = all.missed();
        assertTrue(run.results().fit().orElseThrow().goodEnough());
        assertEquals(run.results().fit().orElseThrow().errors(), missed);
        assertTrue(missed.savings().get(PLAN).within() > 0 && missed.savings().get(PLAN).within() <= missed.savings().get(PLAN).largest());
        int last = base.input().years() - 1;
        assertTrue(missed.appropriations().get(PLAN).stream().anyMatch(m -> m.within() > 0), missed.toString());
        assertTrue(missed.spent().get(PLAN).get(last).within() > 0, missed.toString());
        assertTrue(all.percentile(PLAN, 0.1).holds(all.presentCost(PLAN).quantile(0.1)));
    }

    /** Nothing is allowed to be missed, so each draw is evaluated, and shares take no more evaluations than such draws. */
    @Test
    void whatIsNotGoodEnoughIsEvaluated() {
        Study strict = EcoreUtil.copy(study);
        strict.getWhatIf().setDraws(EVALUATED);
        strict.getWhatIf().setFitErrorAllowed(1e-9);
        WhatIfRun exact = drawn(strict);
        assertFalse(exact.results().fit().orElseThrow().goodEnough());
        AllTogether all = exact.results().all().orElseThrow();
        assertEquals(EVALUATED, all.evaluatedWholly());
        assertEquals(FitErrors.none(base), all.missed());
        StudyResult whole = EVALUATOR.evaluate(new StudyVariants(strict).at(new UncertainInputs(strict).draws(EVALUATED).at(EVALUATED - 1)));
        assertEquals(whole.plans().get(PLAN).measures().presentCost(), all.presentCosts(PLAN)[EVALUATED - 1], 1e-6);
        StudyWhatIf counted = new StudyWhatIf(strict, base, 1);
        assertTrue(new RunPlan(counted, 0, false).count(RunPart.SHARES) < new RunPlan(counted, 0, true).count(RunPart.SHARES) / 2);
        strict.getWhatIf().setFitErrorAllowed(0);
        assertTrue(new WhatIfRun(strict, base, 1, Optional.of(exact.saved())).results().fit().orElseThrow().goodEnough());
    }

    /** What was kept out is fitted to the next time, up to as many evaluations as are worth it; stopped and gone on with all the same. */
    @Test
    void moreIsFittedToAsLongAsItIsNotGoodEnough() {
        Study strict = EcoreUtil.copy(study);
        strict.getWhatIf().setDraws(GROWN);
        strict.getWhatIf().setFitErrorAllowed(1e-9);
        WhatIfRun stopped = new WhatIfRun(strict, base, 2, Optional.empty());
        stopped.run(share -> {
            if (stopped.saved().parts().containsKey(RunPart.FIT) && stopped.saved().parts().get(RunPart.FIT)[0].length > EVALUATED) {
                throw new CancellationException();
            }
        }, soFar -> assertTrue(soFar.fit().isEmpty() || soFar.all().isEmpty() || !soFar.fit().orElseThrow().goodEnough()));
        assertTrue(stopped.results().fit().isEmpty(), "not before the last fit");
        StudyWhatIf whatIf = new StudyWhatIf(strict, base, 1);
        FitSteps steps = FitSteps.of(whatIf);
        assertEquals(2, steps.last());
        WhatIfRun goneOn = new WhatIfRun(strict, base, 2, Optional.of(stopped.saved()));
        goneOn.run(share -> {
            if (goneOn.results().fit().isPresent()) {
                throw new CancellationException();
            }
        }, soFar -> {});
        assertEquals(steps.upTo(2), goneOn.saved().parts().get(RunPart.FIT)[0].length);
        FitCheck check = goneOn.results().fit().orElseThrow();
        assertEquals(steps.fittedTo(2), check.fittedTo());
        assertFalse(check.goodEnough());
        strict.getWhatIf().setFitErrorAllowed(1);
        assertEquals(steps.fittedTo(0), new WhatIfRun(strict, base, 1, Optional.of(goneOn.saved())).results().fit().orElseThrow().fittedTo());
    }

    /** Where weather stays, what a price does is what it does in a whole evaluation. */
    @Test
    void pricesAreExactBesideTheSurface() {
        Study priced = EcoreUtil.copy(study);
        ExampleWhatIf.add(priced, "Diesel price", "FuelPrice", "diesel", "pricePerL");
        ExampleWhatIf.add(priced, "Pack price", "PackPrice", "", "pricePerKwh");
        ExampleWhatIf.add(priced, "Bus price", "ElectricType", "*", "purchasePrice");
        StudyWhatIf whatIf = new StudyWhatIf(priced, base, 2);
        FitSteps steps = FitSteps.of(whatIf);
        assertEquals(6, steps.shape(0).terms());
        assertEquals(6 + 2 * 3, steps.shape(1).terms());
        KeptDraws kept = new KeptDraws();
        whatIf.work(steps.evaluations(0), 1, kept, block -> false, Progress.NONE);
        FittedDraws.Reading reading = FittedDraws.of(whatIf, kept, 0).reading();
        double[] cheap = new double[kept.columns().length];
        double[] dear = new double[kept.columns().length];
        reading.at(withDiesel(0.8), new double[] {0, 1, 1, 1, 1}, cheap);
        reading.at(withDiesel(1.3), new double[] {0, 1, 1, 1, 1}, dear);
        StudyVariants variants = new StudyVariants(priced);
        for (int plan = 0; plan <= PLAN; plan++) {
            int column = whatIf.outcomes().columns().presentCost(plan);
            assertEquals(cost(variants, 1.3, plan) - cost(variants, 0.8, plan), dear[column] - cheap[column], 1e-6);
        }
    }

    private static double[] withDiesel(double price) {
        return new double[] {Double.NaN, Double.NaN, price, Double.NaN, Double.NaN};
    }

    private static double cost(StudyVariants variants, double diesel, int plan) {
        return EVALUATOR.evaluate(variants.at(withDiesel(diesel))).plans().get(plan).measures().presentCost();
    }

    @Test
    void keptEvaluationsGiveTheSameSurfaces() {
        WhatIfRun opened = new WhatIfRun(study, base, 1, Optional.of(run.saved()));
        assertEquals(run.results().all().orElseThrow().missed(), opened.results().all().orElseThrow().missed());
        assertArrayEquals(run.results().all().orElseThrow().presentCosts(PLAN), opened.results().all().orElseThrow().presentCosts(PLAN), 0);
    }

    /** Inputs that are no prices are told too; elements that hold the same now stand in one line. */
    @Test
    void whatIsNoPriceIsToldAsItIsDrawn() {
        List<DrawnInput> drawn = run.results().drawn();
        List<MonthClimate> months = study.getSite().getClimate();
        assertEquals(months.stream().mapToDouble(MonthClimate::getMeanLowC).distinct().count()
                + months.stream().mapToDouble(MonthClimate::getMeanHighC).distinct().count(),
                drawn.stream().filter(d -> d.input().equals("Temperature")).count());
        DrawnInput low = drawn.get(0);
        double lowC = months.get(0).getMeanLowC();
        SortedDraws values = low.values().orElseThrow();
        assertEquals("°F", low.unit());
        assertEquals(1000, values.count());
        assertEquals(FieldFormat.of(SitePackage.Literals.MONTH_CLIMATE__MEAN_LOW_C, study).text(lowC), low.now());
        assertTrue(values.quantile(0) >= 32 + 1.8 * (lowC - 3) && values.quantile(1) <= 32 + 1.8 * (lowC + 2), low.toString());
        assertTrue(values.quantile(1) - values.quantile(0) > 5, low.toString());
        assertTrue(drawn.stream().anyMatch(d -> d.input().equals("Cabin loss")));
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
