package org.amberyard.study.whatif;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.variants.FitErrors;
import org.amberyard.core.whatif.Draws;
import org.amberyard.core.whatif.KeptDraws;
import org.amberyard.core.whatif.Miss;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What fitted draws are said to miss holds on draws that neither the fit nor its check has seen, on the example and on small studies,
 * where a single pack more or less is a step in the costs.
 */
class FittedErrorTest {
    private static final int PLAN = 1;
    private static final int OTHER_SEED = 977;
    /** Packs come to their end in some draws and not in others, and later years add nothing but time. */
    private static final int YEARS = 10;
    /** A bound that holds is broken by more draws than this no more often than once in a thousand. */
    private static final double SURE = 0.999;

    private static Study study(int oneRouteIn, int most, boolean priced) throws StudyFileException {
        Study study = ExampleWhatIf.ofWeather(1000);
        UncertainInput fade = ExampleWhatIf.add(study, "Fade", "ElectricType", "*", "calendarFadePerYear");
        fade.setLow(0.5);
        fade.setHigh(2.5);
        if (priced) {
            ExampleWhatIf.add(study, "Diesel price", "FuelPrice", "diesel", "pricePerL");
            ExampleWhatIf.add(study, "Pack price", "PackPrice", "", "pricePerKwh");
        }
        study.getSettings().setHorizonYears(YEARS);
        if (oneRouteIn > 1) {
            ExampleWhatIf.thin(study, oneRouteIn, most);
        }
        return study;
    }

    private static KeptDraws worked(StudyWhatIf whatIf, Evaluations evaluations) {
        KeptDraws kept = new KeptDraws();
        whatIf.work(evaluations, 1, kept, block -> false, Progress.NONE);
        return kept;
    }

    @ParameterizedTest(name = "one route in {0}, at most {1}, step {3}, prices {4}")
    @CsvSource({"1, 18, 16, 0, true", "4, 18, 30, 0, false", "10, 18, 40, 1, true", "1000, 1, 40, 1, false"})
    void theBoundHoldsOnOtherDraws(int oneRouteIn, int most, int others, int step, boolean priced) throws StudyFileException {
        Study study = study(oneRouteIn, most, priced);
        StudyResult base = new StudyEvaluator().evaluate(StudyCompiler.compile(study));
        StudyWhatIf whatIf = new StudyWhatIf(study, base, 2);
        FittedDraws fitted = FittedDraws.of(whatIf, worked(whatIf, FitSteps.of(whatIf).evaluations(step)), step);
        FittedDraws.Reading reading = fitted.reading();
        study.getWhatIf().setSeed(OTHER_SEED);
        Draws drawn = new UncertainInputs(study).draws(others);
        double[][] evaluated = worked(whatIf, new Evaluations(others, drawn::at)).columns();
        double[][] read = new double[others][evaluated.length];
        for (int draw = 0; draw < others; draw++) {
            reading.at(drawn.at(draw), new double[0], read[draw]);
        }
        OutcomeColumns of = whatIf.outcomes().columns();
        FitErrors errors = fitted.check().errors();
        int baseline = of.presentCost(base.input().baseline());
        int cost = of.presentCost(PLAN);
        holds(errors.presentCosts().get(PLAN), others, draw -> evaluated[cost][draw] - read[draw][cost]);
        holds(errors.savings().get(PLAN), others,
                draw -> evaluated[baseline][draw] - evaluated[cost][draw] - read[draw][baseline] + read[draw][cost]);
        int last = of.appropriation(PLAN, of.years() - 1);
        holds(errors.spent().get(PLAN).get(of.years() - 1), others, draw -> IntStream.rangeClosed(of.appropriation(PLAN, 0), last)
                .mapToDouble(year -> evaluated[year][draw] - read[draw][year]).sum());
    }

    private static void holds(Miss said, int draws, IntToDoubleFunction missed) {
        long beyond = IntStream.range(0, draws).filter(draw -> Math.abs(missed.applyAsDouble(draw)) > said.within()).count();
        int most = new BinomialDistribution(null, draws, 1 - Miss.SHARE).inverseCumulativeProbability(SURE);
        assertTrue(beyond <= most, beyond + " of " + draws + " draws are missed by more than " + said);
        assertTrue(said.within() > 0 && said.within() <= said.largest(), said.toString());
    }
}
